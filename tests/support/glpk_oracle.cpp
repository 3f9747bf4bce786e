#include "tests/support/glpk_oracle.h"

#include <glpk.h>

#include <algorithm>
#include <cmath>
#include <cstdlib>
#include <iostream>
#include <map>
#include <vector>

namespace peelpack::support {
namespace {

using catalogue::Category;
using catalogue::categoryAt;
using catalogue::categoryCount;

class Program {
public:
    Program() : m_problem(glp_create_prob())
    {
        glp_term_out(GLP_OFF);
        glp_set_obj_dir(m_problem, GLP_MAX);
    }
    Program(const Program&) = delete;
    Program& operator=(const Program&) = delete;
    ~Program() { glp_delete_prob(m_problem); }

    int addBinary()
    {
        const int column = glp_add_cols(m_problem, 1);
        glp_set_col_kind(m_problem, column, GLP_BV);
        return column;
    }
    int addUpTo(int most)
    {
        const int column = glp_add_cols(m_problem, 1);
        glp_set_col_kind(m_problem, column, GLP_IV);
        glp_set_col_bnds(m_problem, column, most > 0 ? GLP_DB : GLP_FX, 0.0, most);
        return column;
    }
    struct Term {
        int column;
        double factor;
    };
    void addRow(const std::vector<Term>& terms, int kind, double bound)
    {
        if (terms.empty()) {
            return;
        }
        const int row = glp_add_rows(m_problem, 1);
        glp_set_row_bnds(m_problem, row, kind, bound, bound);
        std::vector<int> columns{0};
        std::vector<double> factors{0.0};
        for (const Term& term : terms) {
            columns.push_back(term.column);
            factors.push_back(term.factor);
        }
        glp_set_mat_row(m_problem, row, static_cast<int>(terms.size()), columns.data(), factors.data());
    }
    int maximize(const std::vector<Term>& objective)
    {
        for (int column = 1; column <= glp_get_num_cols(m_problem); ++column) {
            glp_set_obj_coef(m_problem, column, 0.0);
        }
        for (const Term& term : objective) {
            glp_set_obj_coef(m_problem, term.column, term.factor);
        }
        if (objective.empty()) {
            return 0;
        }
        glp_iocp options;
        glp_init_iocp(&options);
        options.presolve = GLP_ON;
        options.msg_lev = GLP_MSG_OFF;
        const int error = glp_intopt(m_problem, &options);
        if (error != 0 || glp_mip_status(m_problem) != GLP_OPT) {
            std::cerr << "GLPK did not solve the program: " << error << '\n';
            std::abort();
        }
        return static_cast<int>(std::lround(glp_mip_obj_val(m_problem)));
    }

private:
    glp_prob* m_problem;
};

} // namespace

tally::Value bestByIntegerProgram(const requirement::RequirementSet& set, std::span<const tally::Item> items)
{
    using Term = Program::Term;
    Program program;
    std::vector<Term> all;
    std::vector<Term> firstScrub;
    std::vector<Term> underLogged;
    std::map<std::pair<unsigned, std::size_t>, std::vector<Term>> byOperationAndCategory;
    std::vector<std::vector<Term>> byTarget(set.targets.size());
    std::vector<std::map<std::size_t, std::vector<Term>>> byTargetAndCategory(set.targets.size());
    std::map<std::size_t, std::vector<Term>> byCategory;
    for (const tally::Item& item : items) {
        std::vector<Term> ofItem;
        for (std::size_t category = 0; category < categoryCount; ++category) {
            const std::optional<sheet::Role> role = item.roleIn(categoryAt(category));
            for (std::size_t target = 0; role && target < set.targets.size(); ++target) {
                if (!set.targets[target].accepts(*role) ||
                    !set.targets[target].categories.contains(categoryAt(category))) {
                    continue;
                }
                const Term term{program.addBinary(), 1.0};
                ofItem.push_back(term);
                all.push_back(term);
                byOperationAndCategory[{item.operation, category}].push_back(term);
                byTarget[target].push_back(term);
                byTargetAndCategory[target][category].push_back(term);
                byCategory[category].push_back(term);
                if (set.targets[target].isFirstScrub()) {
                    firstScrub.push_back(term);
                }
                if (item.logged == categoryAt(category)) {
                    underLogged.push_back(term);
                }
            }
        }
        program.addRow(ofItem, GLP_UP, 1);
    }
    for (const auto& [place, terms] : byOperationAndCategory) {
        if (terms.size() > 1) {
            program.addRow(terms, GLP_UP, 1);
        }
    }
    for (std::size_t target = 0; target < set.targets.size(); ++target) {
        const requirement::Target& rule = set.targets[target];
        program.addRow(byTarget[target], GLP_UP, rule.required);
        for (const auto& [category, terms] : byTargetAndCategory[target]) {
            if (rule.cap) {
                program.addRow(terms, GLP_UP, *rule.cap);
            }
        }
        if (!rule.spread) {
            continue;
        }
        std::vector<Term> chosen;
        std::vector<Term> free = byTarget[target];
        for (const auto& [category, terms] : byTargetAndCategory[target]) {
            const int isChosen = program.addBinary();
            const int reserved = program.addUpTo(static_cast<int>(rule.spread->each));
            chosen.push_back({isChosen, 1.0});
            program.addRow({{reserved, 1.0}, {isChosen, -static_cast<double>(rule.spread->each)}}, GLP_UP, 0);
            std::vector<Term> noMoreThanPlaced{{reserved, 1.0}};
            for (const Term& term : terms) {
                noMoreThanPlaced.push_back({term.column, -1.0});
            }
            program.addRow(noMoreThanPlaced, GLP_UP, 0);
            free.push_back({reserved, -1.0});
        }
        program.addRow(chosen, GLP_UP, rule.spread->specialties);
        program.addRow(free, GLP_UP, static_cast<double>(rule.required) - rule.spread->each * rule.spread->specialties);
    }
    for (const requirement::Limit& limit : set.limits) {
        program.addRow(byCategory[indexOf(limit.category)], GLP_UP, limit.most);
    }
    tally::Value value;
    value.counted = program.maximize(all);
    program.addRow(all, GLP_LO, value.counted);
    value.firstScrub = program.maximize(firstScrub);
    program.addRow(firstScrub, GLP_LO, value.firstScrub);
    value.underLogged = program.maximize(underLogged);
    return value;
}

bool isValidPlacement(const requirement::RequirementSet& set, std::span<const tally::Item> items,
                      std::span<const std::pair<int, int>> seats)
{
    std::map<std::pair<unsigned, int>, int> byOperationAndCategory;
    std::map<std::pair<int, int>, int> byTargetAndCategory;
    std::map<int, int> byTarget;
    std::map<int, int> byCategory;
    for (std::size_t i = 0; i < items.size(); ++i) {
        const auto [target, category] = seats[i];
        if (target < 0) {
            continue;
        }
        const std::optional<sheet::Role> role = items[i].roleIn(categoryAt(static_cast<std::size_t>(category)));
        const requirement::Target& rule = set.targets[static_cast<std::size_t>(target)];
        if (!role || !rule.accepts(*role) ||
            !rule.categories.contains(categoryAt(static_cast<std::size_t>(category))) ||
            ++byOperationAndCategory[{items[i].operation, category}] > 1) {
            return false;
        }
        ++byTargetAndCategory[{target, category}];
        ++byTarget[target];
        ++byCategory[category];
    }
    for (std::size_t t = 0; t < set.targets.size(); ++t) {
        const requirement::Target& rule = set.targets[t];
        const int target = static_cast<int>(t);
        if (byTarget[target] > static_cast<int>(rule.required)) {
            return false;
        }
        std::vector<int> reserved;
        for (int category = 0; category < static_cast<int>(categoryCount); ++category) {
            const int placed = byTargetAndCategory[{target, category}];
            if (rule.cap && placed > static_cast<int>(*rule.cap)) {
                return false;
            }
            reserved.push_back(rule.spread ? std::min(placed, static_cast<int>(rule.spread->each)) : 0);
        }
        if (rule.spread) {
            std::sort(reserved.rbegin(), reserved.rend());
            int free = byTarget[target];
            for (std::size_t i = 0; i < rule.spread->specialties && i < reserved.size(); ++i) {
                free -= reserved[i];
            }
            if (free >
                static_cast<int>(rule.required) - static_cast<int>(rule.spread->each * rule.spread->specialties)) {
                return false;
            }
        }
    }
    return std::all_of(set.limits.begin(), set.limits.end(), [&](const requirement::Limit& limit) {
        return byCategory[static_cast<int>(indexOf(limit.category))] <= static_cast<int>(limit.most);
    });
}

} // namespace peelpack::support
