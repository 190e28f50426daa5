// SPDX-License-Identifier: MIT
#include "catalog/search.h"

#include <algorithm>
#include <optional>
#include <tuple>

#include "catalog/fold.h"
#include "units/order.h"

namespace shoalwright {

namespace {

/// A word has to be this long before one of its letters is overlooked: in four letters another word is too near.
constexpr std::size_t least_forgiven_letters = 5;
/// A query that lies inside a word without beginning it has to be this long, else every "a" finds everything.
constexpr std::size_t least_inside_letters = 3;

/// How a word of the query meets a word of a name, best first.
enum Grade { whole_name, whole_word, beginning, inside, forgiven_word, forgiven_beginning };

std::vector<std::string_view> words_of(std::string_view text) {
  std::vector<std::string_view> words;
  std::size_t from = 0;
  while (from < text.size()) {
    const std::size_t to = std::min(text.find(' ', from), text.size());
    if (to > from) words.push_back(text.substr(from, to - from));
    from = to + 1;
  }
  return words;
}

/// True when one wrong, missing, extra or swapped letter, or none, makes `a` out of `b`.
bool one_slip_apart(std::string_view a, std::string_view b) {
  if (a.size() > b.size()) std::swap(a, b);
  if (b.size() - a.size() > 1) return false;
  std::size_t same = 0;
  while (same < a.size() && a[same] == b[same]) ++same;
  if (a.size() < b.size()) return a.substr(same) == b.substr(same + 1);
  if (same == a.size() || a.substr(same + 1) == b.substr(same + 1)) return true;
  return same + 1 < a.size() && a[same] == b[same + 1] && a[same + 1] == b[same] && a.substr(same + 2) == b.substr(same + 2);
}

/// The same against what `word` begins with, for a query that is still being typed.
bool one_slip_from_a_beginning(std::string_view query, std::string_view word) {
  for (std::size_t length = query.size() - 1; length <= query.size() + 1 && length < word.size(); ++length) {
    if (one_slip_apart(query, word.substr(0, length))) return true;
  }
  return false;
}

std::optional<Grade> grade_of(std::string_view query, std::string_view word) {
  if (query == word) return whole_word;
  if (word.substr(0, query.size()) == query) return beginning;
  if (query.size() >= least_inside_letters && word.find(query) != std::string_view::npos) return inside;
  if (word.size() < least_forgiven_letters) return std::nullopt;
  if (one_slip_apart(query, word)) return forgiven_word;
  if (query.size() >= least_forgiven_letters && one_slip_from_a_beginning(query, word)) return forgiven_beginning;
  return std::nullopt;
}

struct Name {
  const std::string* text;
  NameKind kind;
  bool is_first;  // the name shown on the shelf
};

std::vector<Name> names_of(const Species& species) {
  std::vector<Name> names;
  const auto add = [&](const std::string& text, NameKind kind) {
    if (!text.empty()) names.push_back({&text, kind, names.empty()});
  };
  for (const CommonName& name : species.name.common) add(name.text, NameKind::common);
  add(species.name.scientific, NameKind::scientific);
  for (const std::string& name : species.name.synonyms) add(name, NameKind::old_name);
  for (const std::string& name : species.name.misapplied) add(name, NameKind::old_name);
  for (const std::string& alias : species.aliases) add(alias, NameKind::old_name);
  for (const std::string& name : species.name.sold_as) add(name, NameKind::sold_as);
  add(species.name.family, NameKind::family);
  return names;
}

/// How well a whole query meets one name or one species; smaller is better.
struct Score {
  int worst = 0, sum = 0;
  NameKind kind = NameKind::common;
  bool is_first = true;
  std::size_t words_left = 0;  // words of the name that the query did not ask for
  auto key() const { return std::tuple(worst, kind, !is_first, sum, words_left); }
};

std::optional<Score> score_in(const Name& name, const std::string& query, const std::vector<std::string_view>& words) {
  const std::string text = folded(*name.text);
  const std::vector<std::string_view> name_words = words_of(text);
  Score score{0, 0, name.kind, name.is_first, name_words.size() > words.size() ? name_words.size() - words.size() : 0};
  if (text == query) return score;
  for (const std::string_view word : words) {
    std::optional<Grade> best;
    for (const std::string_view name_word : name_words) {
      const auto grade = grade_of(word, name_word);
      if (grade && (!best || *grade < *best)) best = grade;
    }
    if (!best) return std::nullopt;
    score.worst = std::max<int>(score.worst, *best);
    score.sum += *best;
  }
  return score;
}

struct Ranked {
  SearchHit hit;
  Score score;
  bool in_one_name = true;
};

/// Words that are met only by different names of a species ("corydoras sterba's") still find it, after all that meet in one.
std::optional<Ranked> ranked(const Species& species, const std::string& query, const std::vector<std::string_view>& words) {
  const std::vector<Name> names = names_of(species);
  const auto best_in = [&](const std::string& part, const std::vector<std::string_view>& part_words) {
    std::optional<std::pair<Score, const Name*>> best;
    for (const Name& name : names) {
      const auto score = score_in(name, part, part_words);
      if (score && (!best || score->key() < best->first.key())) best = {*score, &name};
    }
    return best;
  };
  const auto as_hit = [&](const Score& score, const Name& name) {
    return SearchHit{&species, *name.text, name.kind, score.worst >= forgiven_word};
  };
  if (const auto best = best_in(query, words)) return Ranked{as_hit(best->first, *best->second), best->first, true};
  if (words.size() < 2) return std::nullopt;
  std::optional<Ranked> spread;
  for (const std::string_view word : words) {
    const auto best = best_in(std::string(word), {word});
    if (!best) return std::nullopt;
    if (!spread) {
      spread = Ranked{as_hit(best->first, *best->second), best->first, false};
      continue;
    }
    spread->score.worst = std::max(spread->score.worst, best->first.worst);
    spread->score.sum += best->first.sum;
    spread->score.kind = std::max(spread->score.kind, best->first.kind);
    spread->hit.forgiven = spread->hit.forgiven || best->first.worst >= forgiven_word;
  }
  return spread;
}

}  // namespace

std::vector<SearchHit> search(std::span<const Species* const> kinds, std::string_view query) {
  const std::string wanted = folded(query);
  const std::vector<std::string_view> words = words_of(wanted);
  std::vector<SearchHit> hits;
  if (words.empty()) {
    for (const Species* species : kinds) hits.push_back({species, display_name(*species), NameKind::common, false});
    return hits;
  }
  std::vector<Ranked> found;
  for (const Species* species : kinds) {
    if (auto one = ranked(*species, wanted, words)) found.push_back(std::move(*one));
  }
  sort_stable(found, [](const Ranked& a, const Ranked& b) {
    const auto key = [](const Ranked& r) { return std::tuple(r.hit.forgiven, !r.in_one_name, r.score.key()); };
    return key(a) < key(b);
  });
  for (Ranked& one : found) hits.push_back(std::move(one.hit));
  return hits;
}

std::vector<SearchHit> search(const Catalog& catalog, std::string_view query) {
  std::vector<const Species*> kinds;
  for (const Species& species : catalog.species) kinds.push_back(&species);
  return search(kinds, query);
}

}  // namespace shoalwright
