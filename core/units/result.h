// SPDX-License-Identifier: MIT
#pragma once

#include <cassert>
#include <optional>
#include <string>
#include <utility>

namespace shoalwright {

/// Why something from outside (a file, a link, a typed number) could not be taken. `place` is a JSON Pointer or empty;
/// `sentence` is one complete sentence for the keeper.
struct Error {
  std::string place;
  std::string sentence;
  bool operator==(const Error&) const = default;
};

/// A value, or the error that stands in its place. Never both, never neither.
template <class T>
class Result {
 public:
  Result(T value) : value_(std::move(value)) {}
  Result(Error error) : error_(std::move(error)) {}
  explicit operator bool() const { return value_.has_value(); }
  const T& value() const {
    assert(value_);
    return *value_;
  }
  T& value() {
    assert(value_);
    return *value_;
  }
  const T& operator*() const { return value(); }
  const T* operator->() const { return &value(); }
  /// Meaningful only when there is no value.
  const Error& error() const { return error_; }

 private:
  std::optional<T> value_;
  Error error_;
};

}  // namespace shoalwright
