// seal/hex.h: bytes of the published vectors, and bytes with one bit changed.
#pragma once

#include <boost/test/unit_test.hpp>
#include <cstdint>
#include <string>

template <class Bytes>
std::string hex(const Bytes& bytes) {
  std::string text;
  for (const std::uint8_t byte : bytes) {
    text += "0123456789abcdef"[byte >> 4];
    text += "0123456789abcdef"[byte & 15];
  }
  return text;
}

inline std::string text_of(const std::string& hexadecimal) {
  std::string text;
  for (std::size_t i = 0; i + 1 < hexadecimal.size(); i += 2) {
    text += static_cast<char>(std::stoi(hexadecimal.substr(i, 2), nullptr, 16));
  }
  return text;
}

template <class Bytes>
Bytes bytes_of(const std::string& hexadecimal) {
  const std::string text = text_of(hexadecimal);
  Bytes bytes{};
  BOOST_REQUIRE_EQUAL(text.size(), bytes.size());
  for (std::size_t i = 0; i < bytes.size(); ++i) bytes[i] = static_cast<std::uint8_t>(text[i]);
  return bytes;
}

template <class Bytes>
Bytes with_bit_changed(Bytes bytes, std::size_t bit) {
  bytes[bit / 8] = static_cast<std::uint8_t>(bytes[bit / 8] ^ (1U << (bit % 8)));
  return bytes;
}
