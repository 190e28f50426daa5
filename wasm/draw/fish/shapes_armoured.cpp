// SPDX-License-Identifier: MIT
#include "draw/fish/shapes.h"

namespace shoalwright {

constexpr ShapeData pleco_shape = {
    .top = {{0, -0.075f}, {0.05f, -0.01f}, {0.15f, 0.095f}, {0.3f, 0.16f}, {0.5f, 0.13f}, {0.75f, 0.08f}, {1, 0.055f}},
    .bottom = {{0, -0.1f}, {0.12f, -0.12f}, {0.35f, -0.122f}, {0.65f, -0.09f}, {0.85f, -0.06f}, {1, -0.05f}},
    .fins = {back_fin(0.35f, 0.58f, {{0.36f, 0.32f}, {0.42f, 0.405f}, {0.52f, 0.35f}, {0.61f, 0.21f}}),
             fixed(back_fin(0.79f, 0.86f, {{0.85f, 0.14f}, {0.89f, 0.12f}})),
             belly_fin(0.62f, 0.7f, {{0.68f, -0.15f}, {0.74f, -0.14f}}),
             belly_fin(0.44f, 0.54f, {{0.5f, -0.2f}, {0.6f, -0.225f}, {0.61f, -0.14f}}),
             pectoral(0.23f, 0.31f, -0.085f, {{0.29f, -0.19f}, {0.42f, -0.25f}, {0.48f, -0.2f}, {0.4f, -0.1f}})},
    .tail = {{1.28f, 0.17f}, {1.25f, 0.06f}, {1.2f, -0.03f}, {1.25f, -0.13f}, {1.31f, -0.2f}},

    .eye = {0.19f, 0.072f},
    .eye_radius = 0.025f,
    .fin_accent = 0.12f,
    .fin_alpha = 0.9f,
    .gill_x = 0.28f,
    .scales = false,
    .dark_fins = true,
    .accent_marks = true};

constexpr ShapeData bristlenose_shape = {
    .top = {{0, -0.075f}, {0.05f, -0.01f}, {0.15f, 0.105f}, {0.3f, 0.17f}, {0.5f, 0.13f}, {0.75f, 0.08f}, {1, 0.055f}},
    .bottom = {{0, -0.1f}, {0.12f, -0.12f}, {0.35f, -0.122f}, {0.65f, -0.09f}, {0.85f, -0.06f}, {1, -0.05f}},
    .fins = {back_fin(0.35f, 0.58f, {{0.36f, 0.32f}, {0.42f, 0.405f}, {0.52f, 0.35f}, {0.61f, 0.21f}}),
             fixed(back_fin(0.79f, 0.86f, {{0.85f, 0.14f}, {0.89f, 0.12f}})),
             belly_fin(0.62f, 0.7f, {{0.68f, -0.15f}, {0.74f, -0.14f}}),
             belly_fin(0.44f, 0.54f, {{0.5f, -0.2f}, {0.6f, -0.225f}, {0.61f, -0.14f}}),
             pectoral(0.23f, 0.31f, -0.085f, {{0.29f, -0.19f}, {0.42f, -0.25f}, {0.48f, -0.2f}, {0.4f, -0.1f}})},
    .tail = {{1.28f, 0.17f}, {1.25f, 0.06f}, {1.2f, -0.03f}, {1.25f, -0.13f}, {1.31f, -0.2f}},

    .eye = {0.19f, 0.072f},
    .eye_radius = 0.025f,
    .fin_accent = 0.12f,
    .fin_alpha = 0.9f,
    .gill_x = 0.28f,
    .bristles = true,
    .scales = false,
    .dark_fins = true,
    .accent_marks = true};

}  // namespace shoalwright
