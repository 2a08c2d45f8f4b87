#include "document/as_text.h"

#include <algorithm>
#include <vector>

#include "document/chart_lines.h"
#include "document/table_lines.h"
#include "document/wrap.h"
#include "text/unicode.h"

namespace document {
namespace {

using Lines = std::vector<std::string>;

void add(Lines& lines, const Lines& more) { lines.insert(lines.end(), more.begin(), more.end()); }

// Lines of one kind of block each, found by the type of the block.
struct BlockLines {
  std::size_t columns;

  Lines operator()(const Heading& heading) const { return wrapped(heading.text, columns); }
  Lines operator()(const Paragraph& paragraph) const { return wrapped(paragraph.text, columns); }
  Lines operator()(const Table& table) const { return table_lines(table, columns); }
  Lines operator()(const Chart& chart) const { return chart_lines(chart, columns); }
  Lines operator()(const Note& note) const { return wrapped("Note: " + note.text, columns); }
  Lines operator()(const SignatureBlock& block) const;
};

Lines BlockLines::operator()(const SignatureBlock& block) const {
  constexpr std::size_t longest_line = 60;
  Lines lines;
  if (!block.statement.empty()) add(lines, wrapped("\"" + block.statement + "\"", columns));
  for (const std::string& label : block.labels) {
    Lines label_lines = wrapped(label + ":", columns);
    const std::size_t used = text::columns(label_lines.back()) + 1;
    const std::size_t end = std::min(columns, longest_line);
    // A hand needs some room to write, even if the label leaves none.
    const std::size_t room = std::max<std::size_t>(end > used ? end - used : 0, 10);
    label_lines.back() += ' ' + std::string(room, '_');
    add(lines, label_lines);
  }
  return lines;
}

bool is_tall(const Block& block) {
  if (std::holds_alternative<Chart>(block)) return true;
  const Table* table = std::get_if<Table>(&block);
  return table != nullptr && has_head(*table);
}

// Sentences follow each other line by line; what is looked for with the eye stands apart.
bool is_apart(const Block& before, const Block& after) {
  if (std::holds_alternative<Heading>(after)) return true;
  if (std::holds_alternative<Heading>(before)) return false;
  if (std::holds_alternative<SignatureBlock>(after)) return true;
  return is_tall(before) || is_tall(after);
}

Lines head_lines(const Document& document, std::size_t columns) {
  Lines lines;
  if (!document.title.empty()) add(lines, wrapped(document.title, columns));
  for (const std::string& line : document.head) add(lines, wrapped(line, columns));
  return lines;
}

}  // namespace

std::string as_text(const Document& document, std::size_t columns) {
  Lines lines = head_lines(document, columns);
  const Block* before = nullptr;
  for (const Block& block : document.blocks) {
    const bool has_gap = before != nullptr ? is_apart(*before, block) : !lines.empty();
    if (has_gap) lines.emplace_back();
    add(lines, std::visit(BlockLines{columns}, block));
    before = &block;
  }
  std::string result;
  for (const std::string& line : lines) {
    result += line.substr(0, line.find_last_not_of(' ') + 1);
    result += '\n';
  }
  return result;
}

}  // namespace document
