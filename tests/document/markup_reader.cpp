#include "document/markup_reader.h"

#include <boost/test/unit_test.hpp>
#include <cctype>

namespace document_test {
namespace {

class Reader {
 public:
  explicit Reader(std::string_view file) : left_(file) {}

  Node whole() {
    if (left_.starts_with("<!DOCTYPE html>\n")) left_.remove_prefix(16);
    Node node = element();
    BOOST_REQUIRE_EQUAL(left_, "\n");
    return node;
  }

  Node fragment() {
    Node node = element();
    BOOST_REQUIRE(left_.empty());
    return node;
  }

 private:
  void expect(std::string_view words) {
    BOOST_REQUIRE_MESSAGE(left_.starts_with(words),
                          "wanted " << words << " at " << left_.substr(0, 60));
    left_.remove_prefix(words.size());
  }

  std::string name() {
    std::size_t end = 0;
    while (end < left_.size() &&
           (std::isalnum(static_cast<unsigned char>(left_[end])) != 0 || left_[end] == '-')) {
      ++end;
    }
    BOOST_REQUIRE(end > 0);
    std::string result(left_.substr(0, end));
    left_.remove_prefix(end);
    return result;
  }

  // Text up to that byte, with references decoded; no other markup may stand in it.
  std::string decoded(char end) {
    std::string result;
    while (!left_.empty() && left_.front() != end) {
      BOOST_REQUIRE(left_.front() != '<');
      if (left_.front() == '&') {
        result += reference();
      } else {
        result += left_.front();
        left_.remove_prefix(1);
      }
    }
    return result;
  }

  char reference() {
    static const std::map<std::string, char> known = {
        {"&amp;", '&'}, {"&lt;", '<'}, {"&gt;", '>'}, {"&quot;", '"'}, {"&#39;", '\''}};
    const std::string found(left_.substr(0, left_.find(';') + 1));
    BOOST_REQUIRE_MESSAGE(known.count(found) == 1, found);
    left_.remove_prefix(found.size());
    return known.at(found);
  }

  Node element() {
    expect("<");
    Node node;
    node.name = name();
    while (left_.starts_with(" ")) {
      left_.remove_prefix(1);
      const std::string key = name();
      expect("=\"");
      BOOST_REQUIRE(node.attributes.emplace(key, decoded('"')).second);
      expect("\"");
    }
    if (left_.starts_with("/>")) {
      left_.remove_prefix(2);
      return node;
    }
    expect(">");
    if (node.name == "meta") return node;
    read_inside(node);
    return node;
  }

  void read_inside(Node& node) {
    const std::string end = "</" + node.name + ">";
    while (!left_.starts_with(end)) {
      BOOST_REQUIRE(!left_.empty());
      if (left_.front() == '<') {
        node.children.push_back(element());
        continue;
      }
      Node text;
      // Style is raw in HTML; ours holds no tag and no reference.
      text.text = decoded('<');
      node.children.push_back(std::move(text));
    }
    left_.remove_prefix(end.size());
  }

  std::string_view left_;
};

void collect(const Node& node, std::string_view name, std::vector<const Node*>& found) {
  if (node.name == name) found.push_back(&node);
  for (const Node& child : node.children) collect(child, name, found);
}

}  // namespace

Node read_markup(std::string_view file) {
  return file.ends_with('\n') ? Reader(file).whole() : Reader(file).fragment();
}

std::vector<const Node*> all_of(const Node& node, std::string_view name) {
  std::vector<const Node*> found;
  collect(node, name, found);
  return found;
}

std::string text_in(const Node& node) {
  std::string result = node.text;
  for (const Node& child : node.children) result += text_in(child);
  return result;
}

std::string attribute(const Node& node, const std::string& name) {
  const auto found = node.attributes.find(name);
  return found == node.attributes.end() ? "" : found->second;
}

}  // namespace document_test
