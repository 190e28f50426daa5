// SPDX-License-Identifier: MIT
#include <algorithm>
#include <cmath>

#include "draw/scene/crowding.h"

namespace shoalwright {

namespace {

constexpr int columns = 45;
constexpr float ceiling_where_room = 0.985f;

float mean_of(const std::vector<float>& values) {
  float sum = 0;
  for (const float v : values) sum += v;
  return sum / static_cast<float>(values.size());
}

// Bends values under a ceiling without changing their mean: v becomes c (1 - e^(-k v / c)). The mean rises with k, so k is found
// by halving.
void bend(std::vector<float>& values, float mean, float ceiling) {
  const auto bent = [ceiling](float v, float k) { return ceiling * (1 - std::exp(-k * v / ceiling)); };
  float low = 0, high = 200;
  for (int i = 0; i < 44; ++i) {
    const float k = (low + high) / 2;
    float sum = 0;
    for (const float v : values) sum += bent(v, k);
    (sum / static_cast<float>(values.size()) < mean ? low : high) = k;
  }
  for (float& v : values) v = bent(v, (low + high) / 2);
}

}  // namespace

CrowdingField spread_field(const std::vector<float>& depth_cm, const std::vector<float>& open_l_cm,
                           const std::vector<FieldShare>& shares, const std::vector<float>& open_share,
                           const std::vector<bool>& over, float length_cm) {
  CrowdingField field;
  if (depth_cm.size() < 2 || open_l_cm.size() != depth_cm.size() || !(length_cm > 0)) return field;
  field.columns = columns;
  field.rows = static_cast<int>(depth_cm.size());
  field.x1_cm = length_cm;
  field.depth0_cm = depth_cm.front();
  field.depth1_cm = depth_cm.back();

  std::vector<float> open(columns, 1);
  for (size_t i = 0; i < open.size() && !open_share.empty(); ++i) {
    const float at = static_cast<float>(i) / (columns - 1) * static_cast<float>(open_share.size() - 1);
    const auto k = std::min(static_cast<size_t>(at), open_share.size() - 1);
    // Never quite shut, or a spot would want more than there can be.
    open[i] =
        std::max(0.25f, lerp(open_share[k], open_share[std::min(k + 1, open_share.size() - 1)], at - static_cast<float>(k)));
  }
  const float open_mean = mean_of(open);
  // How a group spreads over the columns: most at its home, some everywhere; mean 1.
  std::vector<std::vector<float>> presence;
  for (const FieldShare& share : shares) {
    std::vector<float> one(columns);
    for (size_t i = 0; i < one.size(); ++i) {
      const float away = (static_cast<float>(i) / (columns - 1) * length_cm - share.home_cm) / std::max(share.reach_cm, 0.5f);
      one[i] = 0.4f + std::exp(-0.5f * away * away);
    }
    const float mean = mean_of(one);
    for (float& v : one) v /= mean;
    presence.push_back(std::move(one));
  }

  for (size_t row = 0; row < depth_cm.size(); ++row) {
    float wanted = 0;
    for (const FieldShare& share : shares) wanted += row < share.wanted_l_cm.size() ? share.wanted_l_cm[row] : 0.0f;
    std::vector<float> values(columns, open_l_cm[row] > 0 ? 0.0f : NAN);
    const float mean = open_l_cm[row] > 0 ? wanted / open_l_cm[row] : 0.0f;
    if (mean > 0) {
      for (size_t s = 0; s < shares.size(); ++s) {
        const float mine = row < shares[s].wanted_l_cm.size() ? shares[s].wanted_l_cm[row] / wanted : 0.0f;
        for (size_t i = 0; i < values.size(); ++i) values[i] += mine * presence[s][i];
      }
      for (size_t i = 0; i < values.size(); ++i) values[i] *= mean * open_mean / open[i];
      const bool may_pass = row < over.size() && over[row];
      const float ceiling = may_pass && mean > 1 ? mean * 1.25f : ceiling_where_room;
      // A mean at the ceiling leaves no room to bend: the row lies flat under it.
      if (mean >= ceiling * 0.998f) {
        std::fill(values.begin(), values.end(), ceiling);
      } else {
        bend(values, mean, ceiling);
      }
    }
    field.nodes.insert(field.nodes.end(), values.begin(), values.end());
  }
  return field;
}

}  // namespace shoalwright
