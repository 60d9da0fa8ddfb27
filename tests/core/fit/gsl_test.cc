// Second opinion: the GNU Scientific Library's gsl_multifit_nlinear on the
// curve shapes flowkin fits, seeded noisy data.

#include <gsl/gsl_blas.h>
#include <gsl/gsl_multifit_nlinear.h>
#include <gtest/gtest.h>

#include <cmath>
#include <functional>

#include "core/base/random.h"
#include "core/fit/least_squares.h"

namespace flowkin {
namespace {

using Curve = std::function<double(std::span<const double> b, double t_s)>;

struct Shape {
  std::string name;
  Curve curve;
  std::vector<double> truth, start;
  double t_first_s, t_last_s;
  double noise;  ///< sd, same at every point
};

struct GslData {
  const Shape* shape;
  const std::vector<double>* t_s;
  const std::vector<double>* y;
};

int GslResiduals(const gsl_vector* x, void* pointer, gsl_vector* f) {
  const auto* data = static_cast<const GslData*>(pointer);
  const std::span<const double> b(x->data, x->size);
  for (std::size_t i = 0; i < data->t_s->size(); ++i) {
    gsl_vector_set(
        f, i, data->shape->curve(b, (*data->t_s)[i]) - (*data->y)[i]);
  }
  return GSL_SUCCESS;
}

/// Parameters, then standard deviations scaled by chi-square / dof.
std::vector<double> FitWithGsl(const Shape& shape,
                               const std::vector<double>& t_s,
                               const std::vector<double>& y) {
  const std::size_t n = t_s.size(), p = shape.start.size();
  GslData data{&shape, &t_s, &y};
  gsl_multifit_nlinear_fdf fdf = {};
  fdf.f = GslResiduals;
  fdf.n = n;
  fdf.p = p;
  fdf.params = &data;
  gsl_multifit_nlinear_parameters parameters =
      gsl_multifit_nlinear_default_parameters();
  parameters.fdtype = GSL_MULTIFIT_NLINEAR_CTRDIFF;
  auto* workspace =
      gsl_multifit_nlinear_alloc(gsl_multifit_nlinear_trust, &parameters, n, p);
  const gsl_vector_const_view start =
      gsl_vector_const_view_array(shape.start.data(), p);
  gsl_multifit_nlinear_init(&start.vector, &fdf, workspace);
  int info = 0;
  gsl_multifit_nlinear_driver(
      500, 1e-12, 1e-12, 0.0, nullptr, nullptr, &info, workspace);
  gsl_matrix* covariance = gsl_matrix_alloc(p, p);
  gsl_multifit_nlinear_covar(
      gsl_multifit_nlinear_jac(workspace), 0.0, covariance);
  const gsl_vector* f = gsl_multifit_nlinear_residual(workspace);
  double chi_square = 0.0;
  gsl_blas_ddot(f, f, &chi_square);
  std::vector<double> result;
  const gsl_vector* x = gsl_multifit_nlinear_position(workspace);
  for (std::size_t j = 0; j < p; ++j) result.push_back(gsl_vector_get(x, j));
  for (std::size_t j = 0; j < p; ++j) {
    result.push_back(std::sqrt(gsl_matrix_get(covariance, j, j) * chi_square /
                               static_cast<double>(n - p)));
  }
  gsl_matrix_free(covariance);
  gsl_multifit_nlinear_free(workspace);
  return result;
}

class OwnShapes : public testing::TestWithParam<Shape> {};

TEST_P(OwnShapes, AgreeWithGsl) {
  const Shape& shape = GetParam();
  Random random(77);
  for (int run = 0; run < 20; ++run) {
    std::vector<double> t_s, y;
    const int n = 60;
    for (int i = 0; i < n; ++i) {
      t_s.push_back(shape.t_first_s +
                    (shape.t_last_s - shape.t_first_s) * i / (n - 1));
      y.push_back(shape.curve(shape.truth, t_s.back()) +
                  random.Normal(0.0, shape.noise));
    }
    CurveModel model;
    model.values = [&](std::span<const double> b, std::span<double> values) {
      for (std::size_t i = 0; i < t_s.size(); ++i) {
        values[i] = shape.curve(b, t_s[i]);
      }
    };
    const FitResult fit = FitNonlinear(model, y, {}, shape.start);
    ASSERT_TRUE(fit.IsUsable()) << fit.message;
    const std::vector<double> gsl = FitWithGsl(shape, t_s, y);
    const std::size_t p = shape.start.size();
    for (std::size_t j = 0; j < p; ++j) {
      const Estimate ours = fit.Parameter(static_cast<int>(j));
      // Both stop on differences of a sum of squares known to 1e-16, i.e.
      // parameters to about 1e-8 of their standard deviation times sqrt(n);
      // 1e-5 of the sd is far below anything that matters to a painter.
      EXPECT_NEAR(ours.value, gsl[j], 1e-5 * ours.sd) << shape.name << j;
      EXPECT_NEAR(ours.sd, gsl[p + j], 1e-5 * ours.sd) << shape.name << j;
    }
  }
}

std::vector<Shape> Shapes() {
  return {
      {"DecayWithOffset",
       [](std::span<const double> b, double t_s) {
         return b[0] * std::exp(-t_s / b[1]) + b[2];
       },
       {2.0, 1.3, 0.3},
       {1.0, 1.0, 0.0},
       0.0,
       6.0,
       0.04},
      {"PuddleRadius",  // mm, with a virtual start
       [](std::span<const double> b, double t_s) {
         return b[0] * std::pow(std::max(t_s - b[1], 1e-9), 0.125);
       },
       {25.6, 0.5},
       {20.0, 0.0},
       2.0,
       30.0,
       0.1},
      {"StretchedDecay",
       [](std::span<const double> b, double t_s) {
         return b[0] * std::exp(-std::pow(t_s / b[1], b[2]));
       },
       {2.0, 0.8, 0.67},
       {1.5, 1.0, 1.0},
       0.02,
       4.0,
       0.02},
      {"ThinningToPinch",  // straight to zero width at b1
       [](std::span<const double> b, double t_s) {
         return b[0] * (b[1] - t_s);
       },
       {5.0, 0.31},
       {2.0, 0.5},
       0.1,
       0.29,
       0.03},
      {"PowerLaw",
       [](std::span<const double> b, double t_s) {
         return b[0] * std::pow(t_s, b[1]);
       },
       {2.3, -1.5},
       {1.0, -1.0},
       1.0,
       20.0,
       0.01},
  };
}

INSTANTIATE_TEST_SUITE_P(Gsl,
                         OwnShapes,
                         testing::ValuesIn(Shapes()),
                         [](const auto& case_info) {
                           return case_info.param.name;
                         });

}  // namespace
}  // namespace flowkin
