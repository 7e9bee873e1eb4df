#include "domain/decisions/best_mix.h"

#include <glpk.h>

#include <algorithm>
#include <cmath>
#include <memory>

namespace dyestead {
namespace {

// Ends the search on the same place on every machine, unlike a limit on time.
constexpr int kMostNodes = 20'000;
// What is left over by the rounding of the arithmetic.
constexpr double kSlack = 1e-7;

// GLPK writes to the terminal unless told otherwise.
class Quiet {
public:
    Quiet() : before_{glp_term_out(GLP_OFF)} {}
    ~Quiet() { glp_term_out(before_); }
    Quiet(const Quiet&) = delete;
    Quiet& operator=(const Quiet&) = delete;

private:
    int before_;
};

void end_a_long_search(glp_tree* tree, void* ended_early) {
    int nodes = 0;
    glp_ios_tree_size(tree, nullptr, nullptr, &nodes);
    if (nodes <= kMostNodes) return;
    *static_cast<bool*>(ended_early) = true;
    glp_ios_terminate(tree);
}

class Program {
public:
    // Only kinds that are wanted and bring something; the others are nought in the best mix anyway.
    Program(const std::vector<MixKind>& kinds, const std::vector<MixLimit>& limits) {
        glp_set_obj_dir(problem_.get(), GLP_MAX);
        for (std::size_t kind = 0; kind < kinds.size(); ++kind) {
            if (!(kinds[kind].contribution > 0) || kinds[kind].at_most <= 0) continue;
            const int column = glp_add_cols(problem_.get(), 1);
            glp_set_obj_coef(problem_.get(), column, kinds[kind].contribution);
            glp_set_col_bnds(problem_.get(), column, GLP_DB, 0, kinds[kind].at_most);
            kinds_.push_back(kind);
        }
        if (kinds_.empty()) return;
        for (const MixLimit& limit : limits) add(limit);
    }

    double most_in_parts() {
        if (kinds_.empty()) return 0;
        glp_smcp how;
        glp_init_smcp(&how);
        how.msg_lev = GLP_MSG_OFF;
        glp_simplex(problem_.get(), &how);
        return glp_get_status(problem_.get()) == GLP_OPT ? glp_get_obj_val(problem_.get()) : 0;
    }

    // Requires: most_in_parts() was asked.
    void whole(Mix& mix) {
        if (kinds_.empty()) return;
        if (glp_get_num_rows(problem_.get()) == 0) {  // nothing runs short
            for (std::size_t i = 0; i < kinds_.size(); ++i)
                mix.made[kinds_[i]] = static_cast<int>(glp_get_col_ub(problem_.get(), static_cast<int>(i) + 1));
            return;
        }
        for (int column = 1; column <= static_cast<int>(kinds_.size()); ++column)
            glp_set_col_kind(problem_.get(), column, GLP_IV);
        bool ended_early = false;
        glp_iocp how;
        glp_init_iocp(&how);
        how.msg_lev = GLP_MSG_OFF;
        how.mir_cuts = GLP_ON;
        how.gmi_cuts = GLP_ON;
        how.cov_cuts = GLP_ON;
        how.cb_func = end_a_long_search;
        how.cb_info = &ended_early;
        glp_intopt(problem_.get(), &how);
        mix.proven = glp_mip_status(problem_.get()) == GLP_OPT && !ended_early;
        if (glp_mip_status(problem_.get()) != GLP_OPT && glp_mip_status(problem_.get()) != GLP_FEAS) return;
        for (std::size_t i = 0; i < kinds_.size(); ++i)
            mix.made[kinds_[i]] =
                static_cast<int>(std::lround(glp_mip_col_val(problem_.get(), static_cast<int>(i) + 1)));
    }

private:
    void add(const MixLimit& limit) {
        std::vector<int> columns{0};  // GLPK counts from one
        std::vector<double> takes{0};
        double most = 0;
        for (std::size_t i = 0; i < kinds_.size(); ++i) {
            const double each = limit.takes[kinds_[i]];
            if (!(each > 0)) continue;
            columns.push_back(static_cast<int>(i) + 1);
            takes.push_back(each);
            most = std::max(most, each);
        }
        if (most <= 0) return;
        // Milligrams of oil beside hours: brought to one size, for the sake of the arithmetic.
        for (double& each : takes) each /= most;
        const int row = glp_add_rows(problem_.get(), 1);
        glp_set_row_bnds(problem_.get(), row, GLP_UP, 0, std::max(0.0, limit.available) / most);
        glp_set_mat_row(problem_.get(), row, static_cast<int>(columns.size()) - 1, columns.data(), takes.data());
    }

    struct Delete {
        void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
    };
    std::unique_ptr<glp_prob, Delete> problem_{glp_create_prob()};
    std::vector<std::size_t> kinds_;  // the kind of each column
};

double in_parts(const std::vector<MixKind>& kinds, const std::vector<MixLimit>& limits) {
    return Program{kinds, limits}.most_in_parts();
}

}  // namespace

Mix best_mix(const std::vector<MixKind>& kinds, const std::vector<MixLimit>& limits) {
    const Quiet quiet;
    Mix mix;
    mix.made.assign(kinds.size(), 0);
    Program program{kinds, limits};
    mix.brings_in_parts = program.most_in_parts();
    program.whole(mix);
    for (std::size_t kind = 0; kind < kinds.size(); ++kind) {
        mix.brings += kinds[kind].contribution * mix.made[kind];
        auto wanting = kinds;
        ++wanting[kind].at_most;
        mix.wanted_more.push_back(std::max(0.0, in_parts(wanting, limits) - mix.brings_in_parts));
    }
    for (std::size_t at = 0; at < limits.size(); ++at) {
        const MixLimit& limit = limits[at];
        MixLimitUse use;
        for (std::size_t kind = 0; kind < kinds.size(); ++kind) use.used += limit.takes[kind] * mix.made[kind];
        use.left = std::max(0.0, limit.available - use.used);
        for (std::size_t kind = 0; kind < kinds.size(); ++kind)
            if (kinds[kind].contribution > 0 && mix.made[kind] < kinds[kind].at_most &&
                limit.takes[kind] > use.left + kSlack * limit.takes[kind])
                use.stops.push_back(kind);
        auto more = limits;
        more[at].available = std::max(0.0, limit.available) + limit.step;
        use.step_brings = std::max(0.0, in_parts(kinds, more) - mix.brings_in_parts);
        mix.limits.push_back(std::move(use));
    }
    return mix;
}

}  // namespace dyestead
