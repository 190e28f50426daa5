// SPDX-License-Identifier: MIT
#include "support/raster.h"

#include <zlib.h>

#include <algorithm>
#include <array>
#include <cmath>
#include <cstdio>

namespace shoalwright {

namespace {

struct Canvas {
  int width = 0, height = 0;  // in samples
  std::vector<std::array<float, 3>> colour;
};

struct Texture {
  const unsigned char* pixels = nullptr;
  int width = 0, height = 0, bytes = 0;
};

std::array<float, 4> texel(const Texture& texture, int x, int y) {
  x = std::clamp(x, 0, texture.width - 1);
  y = std::clamp(y, 0, texture.height - 1);
  const unsigned char* at =
      texture.pixels +
      (static_cast<size_t>(y) * static_cast<size_t>(texture.width) + static_cast<size_t>(x)) * static_cast<size_t>(texture.bytes);
  if (texture.bytes == 1) return {1, 1, 1, static_cast<float>(at[0]) / 255};
  return {static_cast<float>(at[0]) / 255, static_cast<float>(at[1]) / 255, static_cast<float>(at[2]) / 255,
          static_cast<float>(at[3]) / 255};
}

std::array<float, 4> sample(const Texture& texture, float u, float v) {
  if (texture.pixels == nullptr) return {1, 1, 1, 1};
  const float x = u * static_cast<float>(texture.width) - 0.5f, y = v * static_cast<float>(texture.height) - 0.5f;
  const int ix = static_cast<int>(std::floor(x)), iy = static_cast<int>(std::floor(y));
  const float fx = x - static_cast<float>(ix), fy = y - static_cast<float>(iy);
  const auto a = texel(texture, ix, iy), b = texel(texture, ix + 1, iy), c = texel(texture, ix, iy + 1),
             d = texel(texture, ix + 1, iy + 1);
  std::array<float, 4> out{};
  for (size_t k = 0; k < 4; ++k) out[k] = (a[k] * (1 - fx) + b[k] * fx) * (1 - fy) + (c[k] * (1 - fx) + d[k] * fx) * fy;
  return out;
}

struct Clip {
  int x0, y0, x1, y1;
};

// Corners on a grid of 1/256 sample; a sample on a shared edge belongs to one of the two triangles (top and left edges count).
void triangle(Canvas& canvas, const Clip& clip, const Texture& texture, bool textured, const ImDrawVert* corner[3], ImVec2 origin,
              float scale) {
  std::int64_t x[3], y[3];
  for (int i = 0; i < 3; ++i) {
    x[i] = static_cast<std::int64_t>(std::floor((corner[i]->pos.x - origin.x) * scale * 256 + 0.5f));
    y[i] = static_cast<std::int64_t>(std::floor((corner[i]->pos.y - origin.y) * scale * 256 + 0.5f));
  }
  std::int64_t area = (x[1] - x[0]) * (y[2] - y[0]) - (x[2] - x[0]) * (y[1] - y[0]);
  if (area == 0) return;
  const ImDrawVert* v[3] = {corner[0], corner[1], corner[2]};
  if (area < 0) {
    std::swap(x[1], x[2]);
    std::swap(y[1], y[2]);
    std::swap(v[1], v[2]);
    area = -area;
  }
  const int left = std::max<int>(clip.x0, static_cast<int>(std::min({x[0], x[1], x[2]}) >> 8));
  const int right = std::min<int>(clip.x1 - 1, static_cast<int>((std::max({x[0], x[1], x[2]}) >> 8) + 1));
  const int top = std::max<int>(clip.y0, static_cast<int>(std::min({y[0], y[1], y[2]}) >> 8));
  const int bottom = std::min<int>(clip.y1 - 1, static_cast<int>((std::max({y[0], y[1], y[2]}) >> 8) + 1));
  std::int64_t bias[3];
  for (int i = 0; i < 3; ++i) {
    const int a = (i + 1) % 3, b = (i + 2) % 3;
    const bool counts = y[b] < y[a] || (y[a] == y[b] && x[b] > x[a]);
    bias[i] = counts ? 0 : -1;
  }
  float colour[3][4];
  for (int i = 0; i < 3; ++i) {
    for (int k = 0; k < 4; ++k) colour[i][k] = static_cast<float>((v[i]->col >> (8 * k)) & 255) / 255;
  }
  for (int py = top; py <= bottom; ++py) {
    const std::int64_t sy = static_cast<std::int64_t>(py) * 256 + 128;
    for (int px = left; px <= right; ++px) {
      const std::int64_t sx = static_cast<std::int64_t>(px) * 256 + 128;
      std::int64_t w[3];
      bool in = true;
      for (int i = 0; i < 3 && in; ++i) {
        const int a = (i + 1) % 3, b = (i + 2) % 3;
        w[i] = (x[b] - x[a]) * (sy - y[a]) - (y[b] - y[a]) * (sx - x[a]);
        in = w[i] + bias[i] >= 0;
      }
      if (!in) continue;
      const float share[3] = {static_cast<float>(w[0]) / static_cast<float>(area),
                              static_cast<float>(w[1]) / static_cast<float>(area),
                              static_cast<float>(w[2]) / static_cast<float>(area)};
      float out[4];
      for (int k = 0; k < 4; ++k) out[k] = colour[0][k] * share[0] + colour[1][k] * share[1] + colour[2][k] * share[2];
      if (textured) {
        const auto t = sample(texture, v[0]->uv.x * share[0] + v[1]->uv.x * share[1] + v[2]->uv.x * share[2],
                              v[0]->uv.y * share[0] + v[1]->uv.y * share[1] + v[2]->uv.y * share[2]);
        for (int k = 0; k < 4; ++k) out[k] *= t[static_cast<size_t>(k)];
      }
      auto& below = canvas.colour[static_cast<size_t>(py) * static_cast<size_t>(canvas.width) + static_cast<size_t>(px)];
      for (size_t k = 0; k < 3; ++k) below[k] = below[k] * (1 - out[3]) + out[k] * out[3];
    }
  }
}

Canvas blank(int width, int height, ImU32 paper) {
  Canvas canvas;
  canvas.width = width;
  canvas.height = height;
  canvas.colour.assign(static_cast<size_t>(width) * static_cast<size_t>(height),
                       {static_cast<float>(paper & 255) / 255, static_cast<float>((paper >> 8) & 255) / 255,
                        static_cast<float>((paper >> 16) & 255) / 255});
  return canvas;
}

template <typename FindTexture>
void paint(Canvas& canvas, const ImDrawList& list, ImVec2 origin, float scale, FindTexture find_texture) {
  for (const ImDrawCmd& command : list.CmdBuffer) {
    if (command.UserCallback != nullptr || command.ElemCount == 0) continue;
    const Clip clip{std::max(0, static_cast<int>(std::lround((command.ClipRect.x - origin.x) * scale))),
                    std::max(0, static_cast<int>(std::lround((command.ClipRect.y - origin.y) * scale))),
                    std::min(canvas.width, static_cast<int>(std::lround((command.ClipRect.z - origin.x) * scale))),
                    std::min(canvas.height, static_cast<int>(std::lround((command.ClipRect.w - origin.y) * scale)))};
    const Texture texture = find_texture(command);
    for (unsigned i = 0; i + 2 < command.ElemCount; i += 3) {
      const ImDrawVert* corner[3];
      for (unsigned k = 0; k < 3; ++k) {
        corner[k] =
            &list.VtxBuffer[static_cast<int>(command.VtxOffset + list.IdxBuffer[static_cast<int>(command.IdxOffset + i + k)])];
      }
      const bool textured =
          texture.pixels != nullptr && !(corner[0]->uv.x == corner[1]->uv.x && corner[0]->uv.y == corner[1]->uv.y &&
                                         corner[0]->uv.x == corner[2]->uv.x && corner[0]->uv.y == corner[2]->uv.y);
      triangle(canvas, clip, texture, textured, corner, origin, scale);
    }
  }
}

Picture develop(const Canvas& canvas, int samples) {
  Picture out;
  out.width = canvas.width / samples;
  out.height = canvas.height / samples;
  out.rgba.resize(static_cast<size_t>(out.width) * static_cast<size_t>(out.height) * 4);
  for (int y = 0; y < out.height; ++y) {
    for (int x = 0; x < out.width; ++x) {
      float sum[3] = {};
      for (int j = 0; j < samples; ++j) {
        for (int i = 0; i < samples; ++i) {
          const auto& one = canvas.colour[static_cast<size_t>(y * samples + j) * static_cast<size_t>(canvas.width) +
                                          static_cast<size_t>(x * samples + i)];
          for (size_t k = 0; k < 3; ++k) sum[k] += one[k];
        }
      }
      std::uint8_t* to = &out.rgba[(static_cast<size_t>(y) * static_cast<size_t>(out.width) + static_cast<size_t>(x)) * 4];
      for (int k = 0; k < 3; ++k) {
        to[k] = static_cast<std::uint8_t>(std::clamp(sum[k] / static_cast<float>(samples * samples), 0.0f, 1.0f) * 255 + 0.5f);
      }
      to[3] = 255;
    }
  }
  return out;
}

}  // namespace

ImU32 Picture::at(int x, int y) const {
  if (x < 0 || y < 0 || x >= width || y >= height) return 0;
  const std::uint8_t* p = &rgba[(static_cast<size_t>(y) * static_cast<size_t>(width) + static_cast<size_t>(x)) * 4];
  return IM_COL32(p[0], p[1], p[2], p[3]);
}

Picture rasterise(ImDrawData* data, ImU32 paper, float pixels_per_unit, int samples) {
  samples = std::clamp(samples, 1, 4);
  if (data->Textures != nullptr) {
    for (ImTextureData* texture : *data->Textures) {
      if (texture->Status == ImTextureStatus_WantCreate || texture->Status == ImTextureStatus_WantUpdates) {
        texture->SetTexID(static_cast<ImTextureID>(texture->UniqueID + 1));
        texture->SetStatus(ImTextureStatus_OK);
      } else if (texture->Status == ImTextureStatus_WantDestroy && texture->UnusedFrames > 0) {
        texture->SetTexID(ImTextureID_Invalid);
        texture->SetStatus(ImTextureStatus_Destroyed);
      }
    }
  }
  const auto find_texture = [data](const ImDrawCmd& command) {
    if (data->Textures == nullptr) return Texture{};
    for (ImTextureData* texture : *data->Textures) {
      if (texture->Status == ImTextureStatus_OK && texture->TexID == command.GetTexID()) {
        return Texture{texture->Pixels, texture->Width, texture->Height, texture->BytesPerPixel};
      }
    }
    return Texture{};
  };
  const float scale = pixels_per_unit * static_cast<float>(samples);
  const int width = static_cast<int>(std::lround(data->DisplaySize.x * pixels_per_unit)),
            height = static_cast<int>(std::lround(data->DisplaySize.y * pixels_per_unit));
  Canvas canvas = blank(width * samples, height * samples, paper);
  for (const ImDrawList* list : data->CmdLists) paint(canvas, *list, data->DisplayPos, scale, find_texture);
  return develop(canvas, samples);
}

Picture rasterise(const ImDrawList& list, int width, int height, ImU32 paper, float pixels_per_unit, int samples) {
  samples = std::clamp(samples, 1, 4);
  const float scale = pixels_per_unit * static_cast<float>(samples);
  const auto across = [&](int units) {
    return static_cast<int>(std::lround(static_cast<float>(units) * pixels_per_unit)) * samples;
  };
  Canvas canvas = blank(across(width), across(height), paper);
  paint(canvas, list, {0, 0}, scale, [](const ImDrawCmd&) { return Texture{}; });
  return develop(canvas, samples);
}

bool write_png(const Picture& picture, const std::string& path) {
  std::vector<std::uint8_t> rows;
  const size_t stride = static_cast<size_t>(picture.width) * 4;
  for (int y = 0; y < picture.height; ++y) {
    rows.push_back(0);
    const auto* from = picture.rgba.data() + static_cast<size_t>(y) * stride;
    rows.insert(rows.end(), from, from + stride);
  }
  // Straight from deflate: the build holds only those parts of zlib that links need.
  z_stream stream{};
  if (deflateInit(&stream, 6) != Z_OK) return false;
  std::vector<std::uint8_t> packed(deflateBound(&stream, static_cast<uLong>(rows.size())));
  stream.next_in = rows.data();
  stream.avail_in = static_cast<uInt>(rows.size());
  stream.next_out = packed.data();
  stream.avail_out = static_cast<uInt>(packed.size());
  const bool done = deflate(&stream, Z_FINISH) == Z_STREAM_END;
  const size_t packed_size = stream.total_out;
  deflateEnd(&stream);
  if (!done) return false;
  packed.resize(packed_size);

  std::vector<std::uint8_t> file{137, 80, 78, 71, 13, 10, 26, 10};
  const auto number = [](std::vector<std::uint8_t>& to, std::uint32_t value) {
    for (int shift = 24; shift >= 0; shift -= 8) to.push_back(static_cast<std::uint8_t>(value >> shift));
  };
  const auto chunk = [&](const char* name, const std::vector<std::uint8_t>& body) {
    number(file, static_cast<std::uint32_t>(body.size()));
    std::vector<std::uint8_t> named(name, name + 4);
    named.insert(named.end(), body.begin(), body.end());
    file.insert(file.end(), named.begin(), named.end());
    number(file, static_cast<std::uint32_t>(crc32(0, named.data(), static_cast<uInt>(named.size()))));
  };
  std::vector<std::uint8_t> header;
  number(header, static_cast<std::uint32_t>(picture.width));
  number(header, static_cast<std::uint32_t>(picture.height));
  header.insert(header.end(), {8, 6, 0, 0, 0});
  chunk("IHDR", header);
  chunk("IDAT", packed);
  chunk("IEND", {});

  std::FILE* out = std::fopen(path.c_str(), "wb");
  if (out == nullptr) return false;
  const bool all = std::fwrite(file.data(), 1, file.size(), out) == file.size();
  return std::fclose(out) == 0 && all;
}

}  // namespace shoalwright
