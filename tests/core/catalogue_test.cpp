#include "tests/support/catch.h"

#include "core/base/text.h"
#include "core/catalogue/catalogue.h"
#include "core/catalogue/overlay.h"
#include "platform/files/resources.h"
#include "tests/support/files.h"

#include <algorithm>
#include <map>
#include <set>

using namespace peelpack;
using catalogue::Category;
using catalogue::categoryAt;
using catalogue::categoryCount;
using catalogue::Procedure;

namespace {

const catalogue::Catalogue& shipped()
{
    static const catalogue::Catalogue catalogue = files::shippedCatalogue().value();
    return catalogue;
}

constexpr const char* header = "id\tname\tsynonyms\tshorthand\tcategories\tflags\tsources\n";

} // namespace

TEST_CASE("The catalogue is as large as it must be, in every specialty", "[catalogue]")
{
    std::map<Category, int> byFirst;
    std::map<Category, int> listed;
    for (const Procedure& procedure : shipped().procedures()) {
        ++byFirst[procedure.categories.front()];
        for (const Category category : procedure.categories) {
            ++listed[category];
        }
    }
    CHECK(shipped().procedures().size() >= 1500);
    for (std::size_t i = 0; i < 11; ++i) {
        CAPTURE(std::string(id(categoryAt(i))));
        CHECK(byFirst[categoryAt(i)] >= 60);
    }
    CHECK(byFirst[Category::ProcurementTransplant] >= 12);
    CHECK(byFirst[Category::DiagnosticEndoscopy] == 10); // the ten diagnostic scopes
    CHECK(byFirst[Category::LaborDelivery] >= 3);
}

TEST_CASE("Names are as people say them, and one of a kind", "[catalogue]")
{
    std::set<std::string> names;
    for (const Procedure& procedure : shipped().procedures()) {
        CAPTURE(procedure.id);
        CHECK(names.insert(base::foldCaseAndSpaces(procedure.name)).second);
        CHECK(procedure.name.size() <= 60);
        CHECK(procedure.name.find_first_of("[];") == std::string::npos);
        for (const char* codeWord : {"NEC", "NOS", "unspecified"}) {
            CHECK(procedure.name.find(codeWord) == std::string::npos);
        }
    }
    for (const Procedure& procedure : shipped().procedures()) {
        CAPTURE(procedure.id);
        CHECK(shipped().byExactName(procedure.name).size() == 1); // no synonym is another procedure's name
        CHECK(shipped().byExactName(procedure.id).size() == 1);
    }
}

TEST_CASE("Procedures that programs file in two places list both", "[catalogue]")
{
    const auto lists = [](const char* name, Category a, Category b) {
        CAPTURE(name);
        const auto found = shipped().byExactName(name);
        REQUIRE(found.size() == 1);
        CHECK(found.front()->categories.contains(a));
        CHECK(found.front()->categories.contains(b));
    };
    lists("anterior cervical discectomy and fusion", Category::Neurosurgery, Category::Orthopedics);
    lists("carpal tunnel release", Category::Orthopedics, Category::PlasticReconstructive);
    lists("total thyroidectomy", Category::General, Category::EarNoseThroat);
    lists("below-knee amputation", Category::Orthopedics, Category::PeripheralVascular);
}

// ICD-9-CM volume 3, version 32 (CMS, 2013); MeSH 2024 (NLM), courtesy of the U.S. National Library of Medicine; CCSR
// for ICD-10-PCS v2023.1 (AHRQ HCUP). Trimmed tables in fixtures/catalogue.
TEST_CASE("Every source id of the catalogue is in its published table", "[catalogue]")
{
    std::map<std::string, std::set<std::string>> known;
    for (const auto& [scheme, file] :
         {std::pair{"icd9", "icd9cm_v32_codes.tsv"}, std::pair{"mesh", "mesh2024_procedures.tsv"},
          std::pair{"ccsr", "ahrq_prccsr_v2023_1_categories.tsv"}}) {
        for (const std::vector<std::string>& row : support::tableRows(std::string("fixtures/catalogue/") + file)) {
            known[scheme].insert(row[0]);
        }
    }
    std::size_t without = 0;
    for (const Procedure& procedure : shipped().procedures()) {
        without += procedure.sources.empty() ? 1 : 0;
        for (const std::string& source : procedure.sources) {
            const std::size_t colon = source.find(':');
            CAPTURE(procedure.id, source);
            REQUIRE(colon != std::string::npos);
            CHECK(known[source.substr(0, colon)].contains(source.substr(colon + 1)));
        }
    }
    CHECK(without <= 15); // newer than the tables
}

// MeSH 2024 tree branches, read as specialties in branch_to_specialty_own_reading.tsv. For each entry made from a
// descriptor that falls in one branch only, the branch's specialty is among the entry's; every difference is listed
// with its reason.
TEST_CASE("MeSH's branches agree with the categories", "[catalogue]")
{
    const std::map<std::string, Category> specialties{
        {"General", Category::General},
        {"Cardiothoracic", Category::Cardiothoracic},
        {"Peripheral vascular", Category::PeripheralVascular},
        {"Neurosurgery", Category::Neurosurgery},
        {"Ophthalmology", Category::Eye},
        {"Oral and maxillofacial", Category::OralMaxillofacial},
        {"Orthopedics", Category::Orthopedics},
        {"Otorhinolaryngology", Category::EarNoseThroat},
        {"Plastic and reconstructive", Category::PlasticReconstructive},
        {"Obstetrics and gynecology", Category::ObstetricsGynecology},
        {"Genitourinary", Category::Genitourinary},
    };
    std::vector<std::pair<std::string, Category>> branches;
    for (const std::vector<std::string>& row :
         support::tableRows("fixtures/catalogue/branch_to_specialty_own_reading.tsv")) {
        if (row[0] == "mesh") {
            branches.emplace_back(row[1], specialties.at(row[3]));
        }
    }
    std::map<std::string, Category> specialtyOf; // descriptors of one specialty branch
    for (const std::vector<std::string>& row : support::tableRows("fixtures/catalogue/mesh2024_procedures.tsv")) {
        std::set<std::string> in;
        Category specialty = Category::General;
        for (const std::string_view tree : base::split(row[2], '|')) {
            for (const auto& [branch, category] : branches) {
                if (tree == branch || tree.starts_with(branch + ".")) {
                    in.insert(branch);
                    specialty = category;
                }
            }
        }
        if (in.size() == 1) {
            specialtyOf.emplace(row[0], specialty);
        }
    }
    std::set<std::pair<std::string, std::string>> listed;
    for (const std::vector<std::string>& row : support::tableRows("fixtures/catalogue/mesh_differences.tsv")) {
        CHECK(row.at(4).size() > 20); // a reason
        listed.emplace(row[0], row[1]);
    }
    std::size_t checked = 0;
    std::set<std::pair<std::string, std::string>> differences;
    for (const Procedure& procedure : shipped().procedures()) {
        for (const std::string& source : procedure.sources) {
            const auto found = source.starts_with("mesh:") ? specialtyOf.find(source.substr(5)) : specialtyOf.end();
            if (found == specialtyOf.end()) {
                continue;
            }
            ++checked;
            if (!procedure.categories.contains(found->second)) {
                differences.emplace(procedure.id, found->first);
            }
        }
    }
    CHECK(checked > 1000);
    CHECK(differences.size() * 100 <= checked * 5);
    CHECK(differences == listed);
}

TEST_CASE("A program's table adds, renames and re-orders", "[catalogue]")
{
    const base::Result<catalogue::Catalogue> base = catalogue::Catalogue::fromTsv(
        std::string(header) +
        "hand-x\tHand operation\thand case\tHX\torthopedics|plastic-reconstructive\t\ticd9:82.99\n");
    REQUIRE(base.ok());
    const base::Result<catalogue::Catalogue> laid = base.value().withOverlay(
        std::string(header) +
        "hand-x\tHand procedure\t\t-\tplastic-reconstructive|orthopedics\tcounts-often-not-needed\t\n"
        "new-y\tNew thing\t\t\teye\t\t\n");
    REQUIRE(laid.ok());
    REQUIRE(laid.value().procedures().size() == 2);
    const Procedure& hand = *laid.value().byId("hand-x");
    CHECK(hand.name == "Hand procedure");
    CHECK(hand.synonyms == std::vector<std::string>{"hand case"}); // an empty cell keeps
    CHECK(hand.shorthand.empty());                                 // a dash empties
    CHECK(hand.categories.front() == Category::PlasticReconstructive);
    CHECK(hand.countsOftenNotNeeded);
    CHECK(laid.value().byExactName("NEW  Thing").size() == 1);
}

TEST_CASE("A table may begin with a byte-order mark", "[catalogue]")
{
    const auto read = catalogue::Catalogue::fromTsv("\xEF\xBB\xBF" + std::string(header) + "a\tName\t\t\teye\t\t\n");
    REQUIRE(read.ok());
    CHECK(read.value().byId("a") != nullptr);
}

TEST_CASE("A program's table is refused where one wording would mean two procedures", "[catalogue]")
{
    const auto base =
        catalogue::Catalogue::fromTsv(std::string(header) + "a\tOne\tfirst\t\teye\t\t\nb\tTwo\t\t\teye\t\t\n");
    REQUIRE(base.ok());
    const auto sentence = [&](const std::string& row) {
        const auto laid = catalogue::checkedOverlay(base.value(), header + row);
        return laid ? std::string() : laid.error().sentence;
    };
    CHECK(sentence("b\tONE\t\t\t\t\t\n") ==
          "\"b\" cannot be called \"ONE\": \"a\" is called so too; choose other words.");
    CHECK(sentence("c\tThird\ta third|First\t\teye\t\t\n") ==
          "\"c\" cannot be called \"First\": \"a\" is called so too; choose other words.");
    CHECK(sentence("c\ta\t\t\teye\t\t\n") ==
          "\"c\" cannot be called \"a\": \"a\" is called so too; choose other words.");
    CHECK(sentence("c\tThird\t\t\tfoot\t\t\n").starts_with("Line 2, column categories"));
    CHECK(sentence("a\tOne\tfirst|1st\t\t\t\t\n").empty());

    const auto laid = catalogue::checkedOverlay(base.value(), std::string(header) + "c\tThird\t\t\teye\t\t\n" +
                                                                  "a\t\t\t\tgeneral\t\t\nb\tTwo\t\t\teye\t\t\n");
    REQUIRE(laid.ok());
    const auto rows = catalogue::overlayRows(base.value(), laid.value());
    REQUIRE(rows.size() == 2); // the row of b changes nothing
    CHECK(rows[0].procedure->id == "a");
    CHECK(rows[0].before->categories.front() == Category::Eye);
    CHECK(rows[1].procedure->id == "c");
    CHECK(rows[1].before == nullptr);
}

TEST_CASE("A bad table is refused with its place and its mend", "[catalogue]")
{
    struct Bad {
        std::string rows;
        std::string part;
    };
    const std::vector<Bad> bad{
        {"A B\tName\t\t\teye\t\t\n", "Line 2, column id"},
        {"a\t\t\t\teye\t\t\n", "Line 2, column name"},
        {"a\tName\t\t\tfoot\t\t\n", "column categories: \"foot\""},
        {"a\tName\t\t\t\t\t\n", "at least one category"},
        {"a\tName\t\t\teye|eye\t\t\n", "listed twice"},
        {"a\tName\t\t\tdiagnostic-endoscopy|eye\tdiagnostic-endoscopy\t\n", "stands alone"},
        {"a\tName\t\t\tdiagnostic-endoscopy\t\t\n", "go together"},
        {"a\tName\t\t\teye\todd\t\n", "\"odd\" is no flag"},
        {"a\tName\t\t\teye\t\t\na\tOther\t\t\teye\t\t\n", "already on line 2"},
        {"a\tName\n", "header has 7"},
    };
    for (const Bad& one : bad) {
        const base::Result<catalogue::Catalogue> result = catalogue::Catalogue::fromTsv(header + one.rows);
        CAPTURE(one.rows);
        REQUIRE_FALSE(result.ok());
        CHECK(result.error().sentence.find(one.part) != std::string::npos);
    }
    CHECK_FALSE(catalogue::Catalogue::fromTsv("id\tname\n").ok());
    CHECK_FALSE(catalogue::Catalogue::fromTsv("").ok());
    CHECK_FALSE(catalogue::Catalogue::fromTsv(std::string(header) + "a\tN\xFF\t\t\teye\t\t\n").ok());
}
