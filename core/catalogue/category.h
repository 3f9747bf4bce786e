#pragma once

#include <algorithm>
#include <array>
#include <bit>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <optional>
#include <string_view>

namespace peelpack::catalogue {

/// Where a procedure is filed: the twelve specialties and, apart, two categories that are no specialties.
/// The order is the order of every list a person sees and of every tie (counting rules, section 5).
enum class Category : std::uint8_t {
    General,
    Cardiothoracic,
    EarNoseThroat,
    Eye,
    Genitourinary,
    Neurosurgery,
    ObstetricsGynecology,
    OralMaxillofacial,
    Orthopedics,
    PeripheralVascular,
    PlasticReconstructive,
    ProcurementTransplant,
    DiagnosticEndoscopy,
    LaborDelivery,
};

inline constexpr std::size_t categoryCount = 14;

constexpr std::size_t indexOf(Category category)
{
    return static_cast<std::size_t>(category);
}
constexpr Category categoryAt(std::size_t index)
{
    return static_cast<Category>(index);
}

/// The two categories in which first scrub counts as second scrub.
constexpr bool isApart(Category category)
{
    return category == Category::DiagnosticEndoscopy || category == Category::LaborDelivery;
}

/// The id used in files ("ear-nose-throat").
std::string_view id(Category category);
/// The label on screen ("Ear, nose and throat").
std::string_view label(Category category);
/// Empty when no category has that id.
std::optional<Category> categoryFromId(std::string_view id);

/// A set of categories as bits; default is empty.
class CategorySet {
public:
    constexpr CategorySet() = default;
    static constexpr CategorySet fromBits(std::uint16_t bits)
    {
        CategorySet set;
        set.m_bits = bits;
        return set;
    }
    /// The eleven specialties besides general.
    static constexpr CategorySet specialties() { return fromBits(0x0FFE); }

    constexpr void add(Category category) { m_bits = static_cast<std::uint16_t>(m_bits | (1U << indexOf(category))); }
    [[nodiscard]] constexpr bool contains(Category category) const { return ((m_bits >> indexOf(category)) & 1U) != 0; }
    [[nodiscard]] constexpr bool empty() const { return m_bits == 0; }
    [[nodiscard]] constexpr int size() const { return std::popcount(m_bits); }
    [[nodiscard]] constexpr std::uint16_t bits() const { return m_bits; }
    constexpr CategorySet operator|(CategorySet other) const
    {
        return fromBits(static_cast<std::uint16_t>(m_bits | other.m_bits));
    }
    constexpr CategorySet operator&(CategorySet other) const
    {
        return fromBits(static_cast<std::uint16_t>(m_bits & other.m_bits));
    }
    constexpr bool operator==(const CategorySet&) const = default;

private:
    std::uint16_t m_bits = 0;
};

/// Categories in the order in which they were given, the logged one first, none twice. Fixed room: no allocation.
class CategoryList {
public:
    constexpr CategoryList() = default;
    constexpr CategoryList(std::initializer_list<Category> categories)
    {
        for (const Category category : categories) {
            add(category);
        }
    }
    /// Adds at the end; one that is already there stays where it is.
    constexpr void add(Category category)
    {
        if (!m_set.contains(category)) {
            m_set.add(category);
            m_items[m_size++] = category;
        }
    }
    [[nodiscard]] constexpr std::size_t size() const { return m_size; }
    [[nodiscard]] constexpr bool empty() const { return m_size == 0; }
    /// Only when not empty.
    [[nodiscard]] constexpr Category front() const { return m_items[0]; }
    [[nodiscard]] constexpr const Category* begin() const { return m_items.data(); }
    [[nodiscard]] constexpr const Category* end() const { return m_items.data() + m_size; }
    [[nodiscard]] constexpr CategorySet set() const { return m_set; }
    [[nodiscard]] constexpr bool contains(Category category) const { return m_set.contains(category); }
    constexpr bool operator==(const CategoryList& other) const
    {
        return m_size == other.m_size && std::equal(begin(), end(), other.begin());
    }

private:
    std::array<Category, categoryCount> m_items{};
    CategorySet m_set;
    std::uint8_t m_size = 0;
};

} // namespace peelpack::catalogue
