// SPDX-License-Identifier: MIT
// Dear ImGui's compile-time options (IMGUI_USER_CONFIG): what the planner does not use is not downloaded.
#pragma once

#define IMGUI_DISABLE_DEMO_WINDOWS
#define IMGUI_DISABLE_DEBUG_TOOLS
#define IMGUI_DISABLE_DEFAULT_FONT
#define IMGUI_DISABLE_OBSOLETE_FUNCTIONS
#define IMGUI_DISABLE_FILE_FUNCTIONS
#define IMGUI_DISABLE_DEFAULT_FORMAT_FUNCTIONS  // imgui_small.cpp has them

#ifdef NDEBUG
// Its misuse is found by the tests of builds with assertions; the page carries no sentences about it.
#define IM_ASSERT_USER_ERROR(_EXPR, _MSG) ((void)(_EXPR))
#endif
