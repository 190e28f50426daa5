// SPDX-License-Identifier: MIT
#include "draw/scene/scene.h"

#include <algorithm>
#include <cmath>

#include "draw/scene/build.h"
#include "draw/scene/piece.h"
#include "tank/terrain.h"
#include "units/order.h"

namespace shoalwright {

namespace {

float glass_cm(const Scene& scene) { return static_cast<float>(scene.glass_mm) / 10; }

float length_of(const Scene& scene) {
  float far = 0;
  for (const Point& p : scene.outline_cm) far = std::max(far, static_cast<float>(p.x_cm));
  return far;
}

float width_of(const Scene& scene) {
  float far = 0;
  for (const Point& p : scene.outline_cm) far = std::max(far, static_cast<float>(p.z_cm));
  return far;
}

Extent box_of(const Scene& scene, const Piece& piece, Side side) {
  const PieceFrame frame = frame_of(scene, piece);
  Extent box{1e9f, 1e9f, -1e9f, -1e9f};
  const auto take = [&box](Vec p) {
    box = {std::min(box.x0, p.x), std::min(box.y0, p.y), std::max(box.x1, p.x), std::max(box.y1, p.y)};
  };
  for (const float u : {-0.5f, 0.5f}) {
    for (const float v : {-0.5f, 0.5f}) {
      for (const float up : {0.0f, 1.0f}) take(seen(frame.at(u * frame.length, v * frame.depth, up * frame.height), side));
    }
  }
  if (side == Side::front && piece_kind(piece.kind).floats) box.y1 += 0.6f;  // pads rise over the water
  return box;
}

PieceLayer layer_of(PieceDrawing drawing) {
  return drawing == PieceDrawing::carpet           ? PieceLayer::over_sand
         : drawing == PieceDrawing::floating_cover ? PieceLayer::floating
                                                   : PieceLayer::standing;
}

void add_piece(PieceMeshes& meshes, const Scene& scene, float width_cm, Side side) {
  const Piece& piece = meshes.piece;
  const PieceFrame frame = frame_of(scene, piece);
  const std::uint32_t seed = piece_seed(piece);
  const Palette& colours = palette(scene.theme);
  PieceLight light{&colours, mix(colours.waterMid, colours.waterBot, 0.6f), 0};
  const PieceKind& kind = piece_kind(piece.kind);
  if (side == Side::front) light.far = 0.12f * std::clamp(frame.z / std::max(width_cm, 1.0f), 0.0f, 1.0f);
  Mesh& mesh = side == Side::front ? meshes.front : meshes.above;
  if (piece.base_cm < 0.5 && (kind.drawing == PieceDrawing::facets || kind.drawing == PieceDrawing::dome))
    add_shadow(mesh, frame, side, light);
  switch (kind.drawing) {
    case PieceDrawing::branch: add_limbs(mesh, frame, kind, side, light); return;
    case PieceDrawing::facets: add_facets(mesh, frame, kind, seed, side, light); return;
    case PieceDrawing::dome: add_dome(mesh, frame, kind, side, light); return;
    case PieceDrawing::stem_thicket: add_thicket(mesh, frame, seed, side, light); return;
    case PieceDrawing::rosette: add_rosette(mesh, frame, seed, side, light, false); return;
    case PieceDrawing::fern: add_rosette(mesh, frame, seed, side, light, true); return;
    case PieceDrawing::moss: add_moss(mesh, frame, seed, side, light); return;
    case PieceDrawing::carpet: add_carpet(mesh, scene, frame, seed, side, light); return;
    case PieceDrawing::litter: add_litter(mesh, frame, seed, side, light); return;
    case PieceDrawing::floating_cover:
      light.far = 0;
      add_floating(mesh, side == Side::front ? &meshes.roots : nullptr, frame, static_cast<float>(scene.fill_cm), seed, side,
                   light);
      return;
    case PieceDrawing::outlined: add_box(mesh, frame, side, light); return;
  }
}

PieceMeshes meshes_of(const Piece& piece, const Scene& scene, float width_cm) {
  PieceMeshes meshes;
  meshes.piece = piece;
  meshes.layer = layer_of(piece_kind(piece.kind).drawing);
  add_piece(meshes, scene, width_cm, Side::front);
  add_piece(meshes, scene, width_cm, Side::above);
  return meshes;
}

/// All but the pieces.
void build_tank(SceneCache& cache, const Scene& scene) {
  cache.length_cm = length_of(scene);
  cache.width_cm = width_of(scene);
  for (const Point& p : scene.outline_cm) cache.outline.push_back({static_cast<float>(p.x_cm), static_cast<float>(p.z_cm)});
  if (cache.outline.size() < 3 || !(scene.height_cm > 0)) return;
  add_water(cache);
  add_rear_bank(cache);
  add_gear_behind(cache);
  add_front_sand(cache);
  add_gear_before(cache);
  add_glass_shade(cache);
  add_plan_floor(cache);
}

/// Pieces that were drawn before keep their meshes.
void build_pieces(SceneCache& cache, const Scene& scene) {
  std::vector<PieceMeshes> before = std::move(cache.pieces);
  cache.pieces.clear();
  for (const Piece& piece : scene.pieces) {
    if (!piece.x_cm || !piece.z_cm) continue;
    const auto known = std::find_if(before.begin(), before.end(), [&](const PieceMeshes& one) { return one.piece == piece; });
    if (known == before.end()) {
      cache.pieces.push_back(meshes_of(piece, scene, cache.width_cm));
    } else {
      cache.pieces.push_back(std::move(*known));
      before.erase(known);
    }
  }
  sort_stable(cache.pieces, [](const PieceMeshes& a, const PieceMeshes& b) { return *a.piece.z_cm > *b.piece.z_cm; });
  cache.from_above.clear();
  for (std::size_t i = 0; i < cache.pieces.size(); ++i) cache.from_above.push_back(i);
  // From above what stands lower is covered by what reaches higher.
  const auto top_cm = [&](std::size_t i) {
    const Piece& piece = cache.pieces[i].piece;
    return ground_cm(scene, *piece.x_cm, *piece.z_cm) + piece.base_cm + piece.height_cm;
  };
  sort_stable(cache.from_above, [&](std::size_t a, std::size_t b) { return top_cm(a) < top_cm(b); });
}

}  // namespace

bool update(SceneCache& cache, const Scene& scene) {
  if (cache.built && cache.built_for == scene) return false;
  Scene same_tank = scene;
  same_tank.pieces = cache.built_for.pieces;
  if (!cache.built || !(same_tank == cache.built_for)) {
    cache = SceneCache{};
    cache.built = true;
    cache.built_for = scene;
    build_tank(cache, scene);
  }
  cache.built_for.pieces = scene.pieces;
  if (cache.outline.size() < 3 || !(scene.height_cm > 0)) return true;
  build_pieces(cache, scene);
  return true;
}

Vec front_size_cm(const Scene& scene) {
  return {length_of(scene) + 2 * glass_cm(scene), static_cast<float>(scene.height_cm) + glass_cm(scene)};
}

Vec plan_size_cm(const Scene& scene) { return {length_of(scene) + 2 * glass_cm(scene), width_of(scene) + 2 * glass_cm(scene)}; }

ImVec2 front_point(const FrontView& view, const Scene& scene, double x_cm, double height_cm) {
  return {view.corner.x + (static_cast<float>(x_cm) + glass_cm(scene)) * view.px_per_cm,
          view.corner.y + static_cast<float>(scene.height_cm - height_cm) * view.px_per_cm};
}

ImVec2 plan_point(const PlanView& view, const Scene& scene, double x_cm, double z_cm) {
  return {view.corner.x + (static_cast<float>(x_cm) + glass_cm(scene)) * view.px_per_cm,
          view.corner.y + (width_of(scene) - static_cast<float>(z_cm) + glass_cm(scene)) * view.px_per_cm};
}

Vec front_place(const FrontView& view, const Scene& scene, ImVec2 at) {
  return {(at.x - view.corner.x) / view.px_per_cm - glass_cm(scene),
          static_cast<float>(scene.height_cm) - (at.y - view.corner.y) / view.px_per_cm};
}

Vec plan_place(const PlanView& view, const Scene& scene, ImVec2 at) {
  return {(at.x - view.corner.x) / view.px_per_cm - glass_cm(scene),
          width_of(scene) + glass_cm(scene) - (at.y - view.corner.y) / view.px_per_cm};
}

double ground_cm(const Scene& scene, double x_cm, double z_cm) {
  const double width = width_of(scene);
  const double share = width > 0 ? std::clamp(z_cm / width, 0.0, 1.0) : 0.0;
  const double slope_cm = scene.front_cm + (scene.back_cm - scene.front_cm) * share;
  return scene.line_cm.empty() ? slope_cm : std::max(0.0, slope_cm + rise_at(scene.line_cm, x_cm));
}

double crest_cm(const Scene& scene, double x_cm) {
  return std::max(0.0, std::max(scene.front_cm, scene.back_cm) + rise_at(scene.line_cm, x_cm));
}

PiecePicture piece_picture(const PieceKind& kind, Theme theme) {
  Scene scene;
  scene.theme = theme;
  scene.outline_cm = {{0, 0}, {200, 0}, {200, 200}, {0, 200}};
  scene.height_cm = scene.fill_cm = 100;
  const Piece piece{.kind = std::string(kind.id),
                    .x_cm = 100,
                    .z_cm = 20,
                    .length_cm = kind.length_cm,
                    .depth_cm = kind.depth_cm,
                    .height_cm = kind.height_cm};
  PieceMeshes meshes = meshes_of(piece, scene, 200);
  PiecePicture picture{.layers = {}, .box = box_of(scene, piece, Side::front)};
  for (Mesh* mesh : {&meshes.roots, &meshes.front})
    if (!mesh->empty()) picture.layers.push_back(std::move(*mesh));
  return picture;
}

void draw_piece_picture(ImDrawList* list, const PiecePicture& picture, ImVec2 at, float px_per_cm) {
  const Placement place{.origin = {at.x - picture.box.x0 * px_per_cm, at.y + picture.box.y0 * px_per_cm}, .scale = px_per_cm};
  for (const Mesh& mesh : picture.layers) emit(list, mesh, place);
}

Extent front_extent(const Scene& scene, const Piece& piece) { return box_of(scene, piece, Side::front); }

Extent plan_extent(const Scene& scene, const Piece& piece) { return box_of(scene, piece, Side::above); }

}  // namespace shoalwright
