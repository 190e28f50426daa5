// SPDX-License-Identifier: MIT
#include "support/problem_files.h"

#include <zlib.h>

#include <cstdlib>
#include <cstring>
#include <sstream>

#include "support/plan_files.h"

namespace shoalwright {

namespace {

constexpr std::size_t gzip_head = 10, gzip_tail = 8;  // RFC 1952, of a file that keeps no name
constexpr std::size_t longest_text = 2'000'000;

std::string unzipped(const std::string& file) {
  if (file.size() < gzip_head + gzip_tail || file.compare(0, 4, std::string("\x1f\x8b\x08\0", 4)) != 0) return "";
  z_stream stream;
  std::memset(&stream, 0, sizeof stream);
  if (inflateInit2(&stream, -15) != Z_OK) return "";
  std::string text(longest_text, '\0');
  std::string body = file.substr(gzip_head, file.size() - gzip_head - gzip_tail);
  stream.next_in = reinterpret_cast<Bytef*>(body.data());
  stream.avail_in = static_cast<uInt>(body.size());
  stream.next_out = reinterpret_cast<Bytef*>(text.data());
  stream.avail_out = static_cast<uInt>(text.size());
  const bool whole = inflate(&stream, Z_FINISH) == Z_STREAM_END;
  text.resize(whole ? stream.total_out : 0);
  inflateEnd(&stream);
  return text;
}

}  // namespace

std::vector<StoredProblem> stored_problems() {
  std::vector<StoredProblem> problems;
  std::istringstream lines(test_file("problems/optima.csv"));
  std::string line;
  std::getline(lines, line);  // the names of the columns
  while (std::getline(lines, line)) {
    const std::size_t comma = line.find(',');
    if (comma == std::string::npos) continue;
    problems.push_back({line.substr(0, comma), std::strtod(line.c_str() + comma + 1, nullptr)});
  }
  return problems;
}

std::string problem_text(const std::string& name) {
  const std::string text = test_file("problems/" + name + ".json");
  return text.empty() ? unzipped(test_file("problems/" + name + ".json.gz")) : text;
}

}  // namespace shoalwright
