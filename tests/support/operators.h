// operators.h - is there such an operator between two types? For tests that one without a meaning does not exist.
#pragma once

namespace dyestead::test {

template <class A, class B>
concept Adds = requires(A a, B b) {
    a + b;
};
template <class A, class B>
concept Multiplies = requires(A a, B b) {
    a* b;
};
template <class A, class B>
concept Divides = requires(A a, B b) {
    a / b;
};
template <class A, class B>
concept Compares = requires(A a, B b) {
    a < b;
};

}  // namespace dyestead::test
