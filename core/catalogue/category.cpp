#include "core/catalogue/category.h"

namespace peelpack::catalogue {
namespace {

struct Name {
    std::string_view id;
    std::string_view label;
};

constexpr std::array<Name, categoryCount> names{{
    {"general", "General"},
    {"cardiothoracic", "Cardiothoracic"},
    {"ear-nose-throat", "Ear, nose and throat"},
    {"eye", "Eye"},
    {"genitourinary", "Genitourinary"},
    {"neurosurgery", "Neurosurgery"},
    {"obstetrics-gynecology", "Obstetrics and gynecology"},
    {"oral-maxillofacial", "Oral and maxillofacial"},
    {"orthopedics", "Orthopedics"},
    {"peripheral-vascular", "Peripheral vascular"},
    {"plastic-reconstructive", "Plastic and reconstructive"},
    {"procurement-transplant", "Procurement and transplant"},
    {"diagnostic-endoscopy", "Diagnostic endoscopy"},
    {"labor-delivery", "Vaginal delivery"},
}};

} // namespace

std::string_view id(Category category)
{
    return names[indexOf(category)].id;
}

std::string_view label(Category category)
{
    return names[indexOf(category)].label;
}

std::optional<Category> categoryFromId(std::string_view id)
{
    for (std::size_t i = 0; i < names.size(); ++i) {
        if (names[i].id == id) {
            return categoryAt(i);
        }
    }
    return std::nullopt;
}

} // namespace peelpack::catalogue
