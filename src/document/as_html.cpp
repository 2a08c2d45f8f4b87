#include "document/as_html.h"

#include "document/html_blocks.h"
#include "document/markup.h"
#include "document/page_css.h"

namespace document {
namespace {

// Nothing is loaded and nothing runs: style inside and pictures inside are all a page needs.
constexpr std::string_view policy =
    "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; "
    "form-action 'none'";

struct BlockHtml {
  std::string operator()(const Heading& heading) const { return line("h2", heading.text); }
  std::string operator()(const Paragraph& paragraph) const { return line("p", paragraph.text); }
  std::string operator()(const Table& table) const { return html_table(table); }
  std::string operator()(const Chart& chart) const { return html_chart(chart); }
  std::string operator()(const SignatureBlock& block) const;

  std::string operator()(const Note& note) const {
    return element("p", {{"class", "note"}}, escaped_text("Note: " + note.text)) + "\n";
  }

  static std::string line(std::string_view name, const std::string& words) {
    return element(name, {}, escaped_text(words)) + "\n";
  }
};

std::string BlockHtml::operator()(const SignatureBlock& block) const {
  std::string inner = "\n";
  if (!block.statement.empty()) inner += line("blockquote", "\"" + block.statement + "\"");
  for (const std::string& label : block.labels) {
    inner += element("p", {{"class", "fill"}},
                     element("span", {}, escaped_text(label + ":")) +
                         element("span", {{"class", "rule"}}, "")) +
             "\n";
  }
  return element("section", {{"class", "signature"}}, inner) + "\n";
}

bool is_tile(const Block& block) {
  const Chart* chart = std::get_if<Chart>(&block);
  return chart != nullptr && chart->size == ChartSize::tile;
}

// Tiles that follow each other stand side by side.
std::string body(const Document& document) {
  std::string result;
  std::string tiles;
  const auto end_tiles = [&] {
    if (!tiles.empty()) result += element("div", {{"class", "tiles"}}, "\n" + tiles) + "\n";
    tiles.clear();
  };
  for (const Block& block : document.blocks) {
    if (!is_tile(block)) end_tiles();
    (is_tile(block) ? tiles : result) += std::visit(BlockHtml{}, block);
  }
  end_tiles();
  return result;
}

std::string page_head(const Document& document) {
  return "<head>\n<meta charset=\"utf-8\">\n" +
         ("<meta http-equiv=\"Content-Security-Policy\" content=\"" + std::string(policy) +
          "\">\n") +
         "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n" +
         element("title", {}, escaped(document.title)) + "\n<style>\n" + std::string(page_css) +
         "</style>\n</head>\n";
}

}  // namespace

std::string as_html(const Document& document) {
  std::string head;
  if (!document.title.empty()) head += BlockHtml::line("h1", document.title);
  for (const std::string& words : document.head) {
    head += element("p", {{"class", "head"}}, escaped_text(words)) + "\n";
  }
  return "<!DOCTYPE html>\n<html lang=\"en\">\n" + page_head(document) + "<body>\n" +
         element("header", {}, "\n" + head) + "\n" + element("main", {}, "\n" + body(document)) +
         "\n</body>\n</html>\n";
}

}  // namespace document
