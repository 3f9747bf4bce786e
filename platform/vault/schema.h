#pragma once

#include <span>
#include <string_view>

namespace peelpack::vault {

/// One numbered step of the vault's tables. Steps are never changed once released; a new table is a new step.
struct SchemaStep {
    int number = 0; ///< user_version once it is done
    std::span<const std::string_view> statements;
};

/// All steps, ascending from 1. Each is done in one transaction, together with its number.
std::span<const SchemaStep> schemaSteps();
int newestSchema();

/// Says to other programs whose file it is (PRAGMA application_id).
inline constexpr int applicationId = 0x50454550;

} // namespace peelpack::vault
