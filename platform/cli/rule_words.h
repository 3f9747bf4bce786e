#pragma once

#include "platform/session/directory.h"
#include "sync/journal/rule_payloads.h"

#include <nlohmann/json.hpp>

#include <optional>
#include <string>

/// How the program's rules are said on the command line.
namespace peelpack::cli {

/// "not-said", "core", "lounge", "none".
std::string_view word(journal::PhoneRule phones);
std::optional<journal::PhoneRule> phoneRuleFromWord(std::string_view text);
/// "first,second,observed" to bits and back; empty when a word is none of these.
std::optional<std::uint8_t> rolesFromWords(std::string_view text);
std::vector<std::string> wordsOfRoles(std::uint8_t roles);

nlohmann::ordered_json daysJson(const std::vector<journal::ClinicalDay>& days);
std::string daysText(const std::vector<journal::ClinicalDay>& days);
nlohmann::ordered_json sitesJson(const std::vector<journal::Site>& sites);
std::string sitesText(const std::vector<journal::Site>& sites);
nlohmann::ordered_json signersJson(const std::vector<journal::MaySign>& signers);
std::string signersText(const std::vector<journal::MaySign>& signers);
nlohmann::ordered_json changesJson(const std::vector<journal::RequirementsChange>& changes);
std::string changesText(const std::vector<journal::RequirementsChange>& changes);
/// {"oriented": date or null, "active"}; null where the program has said nothing.
nlohmann::ordered_json standingJson(const std::optional<journal::PreceptorStanding>& standing);
/// "oriented since 2026-01-15, active"; empty where the program has said nothing.
std::string standingText(const std::optional<journal::PreceptorStanding>& standing);

/// Adds every rule besides the policy, as "program show" lists them.
void addRules(const session::Session& session, nlohmann::ordered_json& json, std::string& text);

} // namespace peelpack::cli
