// logbook/names.h: names that cannot be swapped for one another. A name is kept as the sentence
// writes it (blanks collapsed, bare names in capitals); the sentence floor sees to that.
#pragma once

#include <compare>
#include <cstdint>
#include <string>
#include <variant>
#include <vector>

namespace logbook {

template <class Tag>
struct Name {
  std::string text;
  auto operator<=>(const Name&) const = default;
  bool operator==(const Name&) const = default;
};

using Registration = Name<struct RegistrationTag>;  // ZZ-KIT
using ModelName = Name<struct ModelTag>;            // TS-40, "Larkwing 5"
using Serial = Name<struct SerialTag>;              // E-1001
using PartNumber = Name<struct PartNumberTag>;      // PN-4411
using TaskName = Name<struct TaskTag>;              // "annual inspection", D-26-04
using PlaceName = Name<struct PlaceTag>;            // engine 1, "main rotor blade 1"
using PersonName = Name<struct PersonTag>;          // "B. Quill"
using BaseName = Name<struct BaseTag>;              // "North"
using RecordName = Name<struct RecordTag>;          // "Marrow Point"
using MeterName = Name<struct MeterTag>;            // collective, engine-run, "hoist"

// What has a history of its own. Engine = model + serial, part = part number + serial.
struct Aircraft {
  Registration registration;
  auto operator<=>(const Aircraft&) const = default;
  bool operator==(const Aircraft&) const = default;
};
struct Engine {
  ModelName model;
  Serial serial;
  auto operator<=>(const Engine&) const = default;
  bool operator==(const Engine&) const = default;
};
struct Part {
  PartNumber number;
  Serial serial;
  auto operator<=>(const Part&) const = default;
  bool operator==(const Part&) const = default;
};
using Thing = std::variant<Aircraft, Engine, Part>;

// What a limit, task or rule is laid upon: one thing, every engine or aircraft of a model, or every
// part of a part number.
struct Model {
  ModelName name;
  auto operator<=>(const Model&) const = default;
  bool operator==(const Model&) const = default;
};
struct PartKind {
  PartNumber number;
  auto operator<=>(const PartKind&) const = default;
  bool operator==(const PartKind&) const = default;
};
using Scope = std::variant<Aircraft, Engine, Part, Model, PartKind>;

// The half of a person's key that everyone may know, as 64 lower-case hexadecimal digits.
struct PublicKey {
  std::string text;
  auto operator<=>(const PublicKey&) const = default;
  bool operator==(const PublicKey&) const = default;
};

// An entry as people write it: the first characters (five or more) of the writer and the number.
struct EntryName {
  std::string writer;
  std::int64_t number = 0;
  auto operator<=>(const EntryName&) const = default;
  bool operator==(const EntryName&) const = default;
};

// The class and name of everything that a sentence touches, as the frame's field "about" lists it.
// class_ is aircraft, engine, part, model, "part number", task …; names are not yet encoded.
struct About {
  std::string class_;
  std::vector<std::string> names;
  auto operator<=>(const About&) const = default;
  bool operator==(const About&) const = default;
};

}  // namespace logbook
