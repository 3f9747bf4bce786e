#pragma once

#include <nlohmann/json.hpp>

#include <string>

/// What a dishonest person does with a vault that is theirs, and that no command does. Requests and answers are JSON
/// lines; what is named hex is hexadecimal. Made for tests, so that what is wrong about a request ends the program.
namespace peelpack::test {

/// Uses the keys of a vault: signs anything, keeps and seals anything.
class KeyForge {
public:
    /// Opens the vault of that file with its vault code, as text.
    KeyForge(const std::string& file, const std::string& code);
    KeyForge(const KeyForge&) = delete;
    KeyForge& operator=(const KeyForge&) = delete;
    KeyForge(KeyForge&&) = delete;
    KeyForge& operator=(KeyForge&&) = delete;
    ~KeyForge();

    /// do: "who" (ids, keys, feeds and damage), "sign" (message, by the seed or the vault's own key), "sign-again"
    /// (another signature of the same message by a seed), "keep" (entries into the vault, asking no rule), "seal" (the
    /// bytes of a file into a parcel for the honest recipients), "flood" (a volume with so many more entries of this
    /// device, which say in turn what is given), "open" (a parcel), "take" (with the clock set).
    nlohmann::json answer(const nlohmann::json& request);

private:
    struct State;
    std::unique_ptr<State> m_state;
};

/// Changes sealed rows of a vault's file, as whoever has its vault code can, and makes the list of rows fit again.
class RowForge {
public:
    RowForge(const std::string& file, const std::string& code);
    RowForge(const RowForge&) = delete;
    RowForge& operator=(const RowForge&) = delete;
    RowForge(RowForge&&) = delete;
    RowForge& operator=(RowForge&&) = delete;
    ~RowForge();

    /// do: "rows" (number, feed, seq and plain bytes of each), "replace" (the plain bytes of one row).
    nlohmann::json answer(const nlohmann::json& request);

private:
    struct State;
    std::unique_ptr<State> m_state;
};

} // namespace peelpack::test
