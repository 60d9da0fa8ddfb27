#pragma once

#include <span>

namespace flowkin {

/// Solves A x = b for a small symmetric positive definite A by Cholesky's
/// factors A = L L^T, in place and without pivoting.
///
/// @param a            n x n, row after row; only the lower triangle is read.
///                     Holds L afterwards.
/// @param b            n values; holds x afterwards.
/// @param least_pivot  a pivot at or below this counts as singular, >= 0, in
///                     the unit of A's diagonal.
/// @return false where A is singular or not positive; `a` and `b` are spent.
bool SolvePositive(std::span<double> a,
                   std::span<double> b,
                   double least_pivot = 0.0);

}  // namespace flowkin
