// overloaded.h - one lambda for each kind of a variant, for std::visit.
#pragma once

namespace dyestead::reports {

template <class... Fs>
struct Overloaded : Fs... {
    using Fs::operator()...;
};
template <class... Fs>
Overloaded(Fs...) -> Overloaded<Fs...>;  // clang-tidy 14 does not deduce it by itself

}  // namespace dyestead::reports
