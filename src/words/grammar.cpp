#include "words/grammar.h"

#include "quantity/expect.h"
#include "text/unicode.h"

namespace words {

std::string fill(std::string_view sentence, std::initializer_list<std::string_view> gaps) {
  std::string filled;
  for (const std::string_view gap : gaps) {
    const std::size_t at = sentence.find("{}");
    EXPECT(at != std::string_view::npos);
    filled.append(sentence.substr(0, at)).append(gap);
    sentence.remove_prefix(at + 2);
  }
  EXPECT(sentence.find("{}") == std::string_view::npos);
  return filled.append(sentence);
}

std::string fill_named(std::string_view sentence,
                       const std::function<std::string(std::string_view)>& lookup) {
  std::string filled;
  for (std::size_t at = sentence.find('{'); at != std::string_view::npos; at = sentence.find('{')) {
    const std::size_t end = sentence.find('}', at);
    EXPECT(end != std::string_view::npos);
    filled.append(sentence.substr(0, at)).append(lookup(sentence.substr(at + 1, end - at - 1)));
    sentence.remove_prefix(end + 1);
  }
  return filled.append(sentence);
}

std::string counted(std::int64_t number, std::string_view one, std::string_view many) {
  return std::to_string(number) + " " + std::string(number == 1 ? one : many);
}

std::string listed(const std::vector<std::string>& items, std::string_view last_join) {
  std::string list;
  for (std::size_t i = 0; i < items.size(); ++i) {
    if (i > 0) list += i + 1 == items.size() ? " " + std::string(last_join) + " " : ", ";
    list += items[i];
  }
  return list;
}

std::string capital(std::string sentence) {
  const bool is_small = !sentence.empty() && sentence[0] >= 'a' && sentence[0] <= 'z';
  if (is_small) sentence[0] = static_cast<char>(sentence[0] - 'a' + 'A');
  return sentence;
}

std::string that_fits(const std::vector<std::string>& candidates, std::size_t columns) {
  EXPECT(!candidates.empty() && columns > 1);
  for (const std::string& candidate : candidates) {
    if (text::columns(candidate) <= columns) return candidate;
  }
  std::string cut;
  for (const std::string_view cluster : text::clusters(candidates.back())) {
    if (text::columns(cut) + text::columns(cluster) + 1 > columns) break;
    cut += cluster;
  }
  return cut + "…";
}

}  // namespace words
