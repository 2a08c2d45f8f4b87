#pragma once
// Reads HTML and SVG of ours back, by the grammar of XML 1.0 and nothing shared with the writer;
// of HTML it knows the doctype and the tags without an end that we write.

#include <map>
#include <string>
#include <string_view>
#include <vector>

namespace document_test {

struct Node {
  std::string name;  // empty for text
  std::map<std::string, std::string> attributes;
  std::vector<Node> children;
  std::string text;  // decoded, of a text node
};

// The one element of the file. Fails the test where a tag, a quote or a reference is wrong.
Node read_markup(std::string_view file);

// All elements of that name below, in the order of the file.
std::vector<const Node*> all_of(const Node& node, std::string_view name);

// The text of the node and of all below it.
std::string text_in(const Node& node);

// The attribute, or nothing.
std::string attribute(const Node& node, const std::string& name);

}  // namespace document_test
