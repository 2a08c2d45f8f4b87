#include "document/as_json.h"

#include "document/chart_json.h"

namespace document {
namespace {

Json array_of(const std::vector<std::string>& lines) {
  Json result = Json::array();
  for (const std::string& line : lines) result.add(line);
  return result;
}

Json block(std::string_view kind, std::string_view words) {
  return Json::object().set("kind", kind).set("text", words);
}

Json column_json(const Column& column) {
  const std::string_view align = column.align == Align::left ? "left" : "right";
  return Json::object().set("key", column.key).set("name", column.name).set("align", align);
}

Json row_json(const Table& table, const std::vector<Cell>& row) {
  Json result = Json::object();
  for (std::size_t i = 0; i < row.size() && i < table.columns.size(); ++i) {
    result.set(table.columns[i].key, as_json(row[i]));
  }
  return result;
}

struct BlockJson {
  Json operator()(const Heading& heading) const { return block("heading", heading.text); }
  Json operator()(const Paragraph& paragraph) const { return block("paragraph", paragraph.text); }
  Json operator()(const Note& note) const { return block("note", note.text); }
  Json operator()(const Table& table) const;
  Json operator()(const Chart& chart) const { return chart_json(chart); }
  Json operator()(const SignatureBlock& signature) const;
};

Json BlockJson::operator()(const Table& table) const {
  Json columns = Json::array();
  for (const Column& column : table.columns) columns.add(column_json(column));
  Json rows = Json::array();
  for (const std::vector<Cell>& row : table.rows) rows.add(row_json(table, row));
  Json result = Json::object();
  result.set("kind", "table").set("key", table.key).set("columns", std::move(columns));
  return result.set("rows", std::move(rows)).set("if_empty", table.if_empty);
}

Json BlockJson::operator()(const SignatureBlock& signature) const {
  Json result = Json::object();
  result.set("kind", "signature").set("statement", signature.statement);
  return result.set("labels", array_of(signature.labels));
}

}  // namespace

Json as_json(const Cell& cell) {
  Json result = Json::object();
  result.set("shown", cell.shown).set("exact", cell.exact);
  return result.set("unit", cell.unit).set("state", word(cell.state));
}

Json as_json(const Document& document) {
  Json blocks = Json::array();
  for (const Block& each : document.blocks) blocks.add(std::visit(BlockJson{}, each));
  Json result = Json::object();
  result.set("title", document.title).set("head", array_of(document.head));
  return result.set("blocks", std::move(blocks));
}

}  // namespace document
