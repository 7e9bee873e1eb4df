#include "domain/decisions/practice.h"

#include <boost/math/distributions/students_t.hpp>
#include <cmath>
#include <cstddef>

namespace dyestead {
namespace {

constexpr int kEnough = 6;
constexpr double kBeyondDoubt = 0.9;

// Least squares.
struct StraightLine {
    double at_nought = 0;
    double slope = 0;
    double slope_error = 0;
};

struct Point {
    double x = 0;
    double y = 0;
};

// Requires: three points, not all of one x.
StraightLine through(const std::vector<Point>& points) {
    const auto count = static_cast<double>(points.size());
    Point mean;
    for (const Point& each : points) {
        mean.x += each.x / count;
        mean.y += each.y / count;
    }
    double xx = 0;
    double xy = 0;
    for (const Point& each : points) {
        xx += (each.x - mean.x) * (each.x - mean.x);
        xy += (each.x - mean.x) * (each.y - mean.y);
    }
    StraightLine line;
    line.slope = xy / xx;
    line.at_nought = mean.y - line.slope * mean.x;
    double left = 0;
    for (const Point& each : points) {
        const double off = each.y - line.at_nought - line.slope * each.x;
        left += off * off;
    }
    line.slope_error = std::sqrt(left / (count - 2) / xx);
    return line;
}

}  // namespace

double on_learning_curve(double first, double rate, double number) {
    return first * std::pow(number, std::log2(rate));
}

std::optional<Practice> practice(const std::vector<double>& times, int to_come) {
    std::vector<Point> points;
    for (std::size_t i = 0; i < times.size(); ++i)
        if (times[i] > 0) points.push_back({std::log(static_cast<double>(i + 1)), std::log(times[i])});
    Practice result;
    result.vats = static_cast<int>(points.size());
    result.to_come = to_come;
    if (result.vats < kEnough || to_come < 1) return std::nullopt;
    const StraightLine line = through(points);
    const boost::math::students_t chance{static_cast<double>(result.vats - 2)};
    if (line.slope >= -line.slope_error * boost::math::quantile(chance, kBeyondDoubt)) return std::nullopt;
    result.rate = std::exp2(line.slope);
    result.factor = 0;
    const double first = std::exp(line.at_nought);
    for (int i = 1; i <= to_come; ++i) {
        const double number = static_cast<double>(times.size()) + i;
        result.factor += on_learning_curve(first, result.rate, number) / to_come;
    }
    if (result.factor >= 1) return std::nullopt;
    return result;
}

}  // namespace dyestead
