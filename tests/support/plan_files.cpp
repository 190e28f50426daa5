// SPDX-License-Identifier: MIT
#include "support/plan_files.h"

#include <dirent.h>

#include <algorithm>
#include <fstream>
#include <sstream>

#include "catalog/builtin.h"
#include "share/plan_json.h"

namespace shoalwright {

std::string test_file(const std::string& path) {
  std::ifstream file(std::string(SHOALWRIGHT_TESTS_DIR) + '/' + path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

std::vector<std::string> files_of(const std::string& folder, const std::string& end) {
  std::vector<std::string> names;
  DIR* const open = opendir((std::string(SHOALWRIGHT_TESTS_DIR) + '/' + folder).c_str());
  if (open == nullptr) return names;
  while (const dirent* entry = readdir(open)) {
    const std::string name = entry->d_name;
    if (name[0] != '.' && name.size() > end.size() && name.compare(name.size() - end.size(), end.size(), end) == 0)
      names.push_back(name);
  }
  closedir(open);
  std::sort(names.begin(), names.end());
  return names;
}

std::vector<NamedPlan> all_plans() {
  std::vector<NamedPlan> plans;
  for (const std::string& name : files_of("plans", ".json"))
    if (const Result<Plan> plan = read_plan(test_file("plans/" + name))) plans.push_back(NamedPlan{.name = name, .plan = *plan});
  return plans;
}

const Catalog& the_catalog() {
  static const Catalog catalog = builtin_catalog();
  return catalog;
}

}  // namespace shoalwright
