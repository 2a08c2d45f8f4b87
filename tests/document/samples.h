#pragma once
// Documents that several tests look at. Invented, like all aircraft here.

#include "document/document.h"

namespace document_test {

inline document::Table due_table() {
  using document::Align;
  using document::State;
  document::Table table{"due", {}, {}, ""};
  table.columns = {{"item", "Item", Align::left},
                   {"left", "Left", Align::right},
                   {"state", "State", Align::left}};
  table.rows = {
      {{"directive D-26-04", "", "", State::none},
       {"2.8 h", "10080", "s", State::none},
       {"soon", "", "", State::soon}},
      {{"annual inspection", "", "", State::none},
       {"2026-06-30", "2026-06-30", "", State::none},
       {"ok", "", "", State::ok}},
      {{"blade serial B-88", "", "", State::none},
       {"-0.2 h", "-720", "s", State::over},
       {"over", "", "", State::over}},
  };
  return table;
}

// A sum that shows its working: a table without a head.
inline document::Table working_table() {
  using document::Align;
  const auto row = [](std::string amount, std::string exact, std::string words) {
    return std::vector<document::Cell>{{std::move(amount), std::move(exact), "h", {}},
                                       {std::move(words), "", "", {}}};
  };
  document::Table table{
      "working", {{"amount", "", Align::right}, {"what", "", Align::left}}, {}, ""};
  table.rows = {row("6000.0 h", "6000.0", "life since new, \"limitations rev 4\" (K7QXM-31)"),
                row("-5550.0 h", "-5550.0", "used when fitted in module M-4 on 2 May 2024"),
                row("-310.0 h", "-310.0", "flown in M-4 since then, engine E-1001, 212 flights"),
                row("= 140.0 h", "140.0", "The module itself has 400.0 h to overhaul.")};
  return table;
}

inline document::Document due_list() {
  document::Document document{"Due list of ZZ-KIT", {"As of 2026-03-04.", "K7QXM-130"}, {}};
  document.blocks = {document::Heading{"Next"}, due_table(),
                     document::Note{"One base was not heard."},
                     document::SignatureBlock{"I have seen this list.", {"Name", "Certificate"}}};
  return document;
}

}  // namespace document_test
