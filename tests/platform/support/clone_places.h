#pragma once

#include "tests/platform/support/vault_place.h"

#include <memory>

namespace peelpack::test {

/// A device that has a vault, for schedules of backups, restores and clones.
class Place {
public:
    Place() = default;
    Place(const Place&) = delete;
    Place& operator=(const Place&) = delete;
    Place(Place&&) = delete;
    Place& operator=(Place&&) = delete;
    virtual ~Place() = default;

    /// Only one at a time.
    virtual std::unique_ptr<vault::Vault> open() = 0;
    /// For a vault that cannot sign, or must not go on with its keys. It must not be open.
    virtual void setUpAnew() = 0;
};

/// Places of one sort, numbered, the first with a vault that holds `start` and keys of its own; and the backups
/// that were taken of them.
class Places {
public:
    Places() = default;
    Places(const Places&) = delete;
    Places& operator=(const Places&) = delete;
    Places(Places&&) = delete;
    Places& operator=(Places&&) = delete;
    virtual ~Places() = default;

    virtual Place& at(std::size_t number) = 0;
    /// Copies vault and mark away. The vault must not be open.
    virtual void backUp(std::size_t number) = 0;
    [[nodiscard]] virtual std::size_t backups() const = 0;
    /// Puts a backup in a place, which need not be the one where it was taken. With the mark: as a virtual machine that
    /// is rolled back or cloned, where everything is as it was.
    virtual void restore(std::size_t backup, std::size_t number, bool withMark) = 0;
};

/// In memory, with keys that open where their mark is.
std::unique_ptr<Places> modelPlaces(std::size_t count, const vault::Change& start, keys::RandomSource& random);
/// Real vaults in files, with real marks.
std::unique_ptr<Places> filePlaces(std::size_t count, const vault::Change& start, keys::RandomSource& random);

} // namespace peelpack::test
