#include "core/video/prefetch.h"

#include <gtest/gtest.h>

#include <memory>
#include <utility>

namespace flowkin {
namespace {

// Numbered frames, then the end or an error.
class Numbered final : public FrameSource {
 public:
  Numbered(int count, bool fails) : count_(count), fails_(fails) {}
  const ClipInfo& Info() const override { return info_; }
  Result<std::optional<Frame>> Next() override {
    if (info_.frame_count < count_) {
      Frame frame;
      frame.index = info_.frame_count++;
      return std::optional<Frame>(std::move(frame));
    }
    info_.warnings.emplace_back("the end");
    if (fails_) return Error{ErrorCode::kUnreadable, "broken"};
    return std::optional<Frame>();
  }

 private:
  int count_;
  bool fails_;
  ClipInfo info_;
};

TEST(Prefetch, HandsOnFramesInOrderAndTheWholeClipsInfo) {
  for (const int count : {0, 1, 5, 200}) {
    const auto source = Prefetch(std::make_unique<Numbered>(count, false), 3);
    for (int i = 0; i < count; ++i) {
      const auto next = source->Next();
      ASSERT_TRUE(next.has_value() && next->has_value());
      EXPECT_EQ((*next)->index, i);
    }
    for (int again = 0; again < 2; ++again) {
      const auto next = source->Next();
      ASSERT_TRUE(next.has_value());
      EXPECT_FALSE(next->has_value());
    }
    EXPECT_EQ(source->Info().frame_count, count);
    EXPECT_EQ(source->Info().warnings.size(), 1U);
  }
}

TEST(Prefetch, HandsOnTheError) {
  const auto source = Prefetch(std::make_unique<Numbered>(2, true), 8);
  ASSERT_TRUE(source->Next().has_value());
  ASSERT_TRUE(source->Next().has_value());
  const auto next = source->Next();
  ASSERT_FALSE(next.has_value());
  EXPECT_EQ(next.error().message, "broken");
}

TEST(Prefetch, CanBeLeftInTheMiddle) {
  for (int i = 0; i < 50; ++i) {
    const auto source = Prefetch(std::make_unique<Numbered>(1000, false), 2);
    ASSERT_TRUE(source->Next().has_value());
  }
}

}  // namespace
}  // namespace flowkin
