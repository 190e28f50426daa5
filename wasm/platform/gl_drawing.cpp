// SPDX-License-Identifier: MIT
#include "platform/gl_drawing.h"

#include <GLES3/gl3.h>

#include <cmath>
#include <cstddef>
#include <cstring>
#include <vector>

namespace shoalwright::platform {
namespace {

const char* const corner_code =
    "#version 300 es\n"
    "layout(location=0) in vec2 at;layout(location=1) in vec2 texel;layout(location=2) in vec4 ink;"
    "uniform vec4 window;out vec2 t;out vec4 c;"
    "void main(){t=texel;c=ink;gl_Position=vec4(at*window.xy+window.zw,0,1);}";
const char* const pixel_code =
    "#version 300 es\n"
    "precision mediump float;uniform sampler2D letters;in vec2 t;in vec4 c;out vec4 colour;"
    "void main(){colour=c*texture(letters,t);}";

struct State {
  GLint window = 0;  ///< place of the uniform: scale and shift from CSS pixels to WebGL's square
  std::vector<ImDrawVert> corners;
  std::vector<ImDrawIdx> indices;
  std::vector<unsigned char> part;  ///< of a texture on its way
};

State& state() {
  static State the_state;
  return the_state;
}

// Not asked whether it compiled: the question would wait for it, and a browser either has WebGL 2 or it does not.
void add_shader(GLuint program, GLenum kind, const char* code) {
  const GLuint shader = glCreateShader(kind);
  glShaderSource(shader, 1, &code, nullptr);
  glCompileShader(shader);
  glAttachShader(program, shader);
}

/// Where the corners of a list begin in the buffer.
void point_at(std::size_t first) {
  const auto place = [&](GLuint what, GLint parts, GLenum kind, GLboolean to_one, std::size_t within) {
    glVertexAttribPointer(what, parts, kind, to_one, sizeof(ImDrawVert),
                          reinterpret_cast<const void*>(first * sizeof(ImDrawVert) + within));
  };
  place(0, 2, GL_FLOAT, GL_FALSE, offsetof(ImDrawVert, pos));
  place(1, 2, GL_FLOAT, GL_FALSE, offsetof(ImDrawVert, uv));
  place(2, 4, GL_UNSIGNED_BYTE, GL_TRUE, offsetof(ImDrawVert, col));
}

GLuint name_of(ImTextureID id) { return static_cast<GLuint>(id); }

void make_texture(ImTextureData& texture) {
  GLuint name = 0;
  glGenTextures(1, &name);
  glBindTexture(GL_TEXTURE_2D, name);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MIN_FILTER, GL_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_MAG_FILTER, GL_LINEAR);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_S, GL_CLAMP_TO_EDGE);
  glTexParameteri(GL_TEXTURE_2D, GL_TEXTURE_WRAP_T, GL_CLAMP_TO_EDGE);
  glTexImage2D(GL_TEXTURE_2D, 0, GL_RGBA, texture.Width, texture.Height, 0, GL_RGBA, GL_UNSIGNED_BYTE, texture.GetPixels());
  texture.SetTexID(static_cast<ImTextureID>(name));
  texture.SetStatus(ImTextureStatus_OK);
}

void add_to_texture(ImTextureData& texture) {
  State& s = state();
  glBindTexture(GL_TEXTURE_2D, name_of(texture.TexID));
  for (const ImTextureRect& rect : texture.Updates) {
    const std::size_t row = static_cast<std::size_t>(rect.w) * static_cast<std::size_t>(texture.BytesPerPixel);
    s.part.resize(row * rect.h);
    for (int y = 0; y < rect.h; ++y)
      std::memcpy(&s.part[static_cast<std::size_t>(y) * row], texture.GetPixelsAt(rect.x, rect.y + y), row);
    glTexSubImage2D(GL_TEXTURE_2D, 0, rect.x, rect.y, rect.w, rect.h, GL_RGBA, GL_UNSIGNED_BYTE, s.part.data());
  }
  texture.SetStatus(ImTextureStatus_OK);
}

void let_go(ImTextureData& texture) {
  texture.SetTexID(ImTextureID_Invalid);
  texture.SetStatus(ImTextureStatus_Destroyed);
}

void follow_textures() {
  for (ImTextureData* texture : ImGui::GetPlatformIO().Textures) switch (texture->Status) {
      case ImTextureStatus_WantCreate: make_texture(*texture); break;
      case ImTextureStatus_WantUpdates: add_to_texture(*texture); break;
      case ImTextureStatus_WantDestroy:
        if (texture->UnusedFrames > 0) {
          const GLuint name = name_of(texture->TexID);
          glDeleteTextures(1, &name);
          let_go(*texture);
        }
        break;
      case ImTextureStatus_OK:
      case ImTextureStatus_Destroyed: break;
    }
}

/// All lists behind each other, so that a frame is two uploads.
void upload(const ImDrawData& frame) {
  State& s = state();
  s.corners.clear();
  s.indices.clear();
  for (const ImDrawList* list : frame.CmdLists) {
    s.corners.insert(s.corners.end(), list->VtxBuffer.begin(), list->VtxBuffer.end());
    s.indices.insert(s.indices.end(), list->IdxBuffer.begin(), list->IdxBuffer.end());
  }
  glBufferData(GL_ARRAY_BUFFER, static_cast<GLsizeiptr>(s.corners.size() * sizeof(ImDrawVert)), s.corners.data(), GL_STREAM_DRAW);
  glBufferData(GL_ELEMENT_ARRAY_BUFFER, static_cast<GLsizeiptr>(s.indices.size() * sizeof(ImDrawIdx)), s.indices.data(),
               GL_STREAM_DRAW);
}

}  // namespace

void begin_gl_drawing() {
  ImGuiIO& io = ImGui::GetIO();
  io.BackendRendererName = "shoalwright webgl";
  io.BackendFlags |= ImGuiBackendFlags_RendererHasTextures | ImGuiBackendFlags_RendererHasVtxOffset;
  for (ImTextureData* texture : ImGui::GetPlatformIO().Textures)  // those of a context that is gone
    if (texture->TexID != ImTextureID_Invalid) let_go(*texture);

  const GLuint program = glCreateProgram();
  add_shader(program, GL_VERTEX_SHADER, corner_code);
  add_shader(program, GL_FRAGMENT_SHADER, pixel_code);
  glLinkProgram(program);
  glUseProgram(program);
  state().window = glGetUniformLocation(program, "window");

  GLuint buffers[2] = {};
  glGenBuffers(2, buffers);
  glBindBuffer(GL_ARRAY_BUFFER, buffers[0]);
  glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, buffers[1]);
  for (const GLuint what : {0u, 1u, 2u}) glEnableVertexAttribArray(what);
  glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
  glEnable(GL_BLEND);
  glBlendFuncSeparate(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA, GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
  glEnable(GL_SCISSOR_TEST);
}

void draw_by_gl(const ImDrawData& frame, int width_px, int height_px, const ImVec4& ground) {
  glViewport(0, 0, width_px, height_px);
  glScissor(0, 0, width_px, height_px);
  glClearColor(ground.x, ground.y, ground.z, 1);
  glClear(GL_COLOR_BUFFER_BIT);
  follow_textures();
  if (frame.TotalIdxCount == 0) return;
  upload(frame);

  const ImVec2 corner = frame.DisplayPos, size = frame.DisplaySize, scale = frame.FramebufferScale;
  glUniform4f(state().window, 2 / size.x, -2 / size.y, -1 - corner.x * 2 / size.x, 1 + corner.y * 2 / size.y);
  ImTextureID bound = ImTextureID_Invalid;
  int scissor[4] = {0, 0, width_px, height_px};
  std::size_t first_corner = 0, first_index = 0, pointed_at = static_cast<std::size_t>(-1);
  for (const ImDrawList* list : frame.CmdLists) {
    for (const ImDrawCmd& command : list->CmdBuffer) {
      const ImVec4& clip = command.ClipRect;
      const auto pixel = [](float at, float from, float by) { return static_cast<int>(std::lround((at - from) * by)); };
      const int left = pixel(clip.x, corner.x, scale.x), top = pixel(clip.y, corner.y, scale.y);
      const int right = pixel(clip.z, corner.x, scale.x), bottom = pixel(clip.w, corner.y, scale.y);
      if (command.ElemCount == 0 || right <= left || bottom <= top) continue;
      const int cut[4] = {left, height_px - bottom, right - left, bottom - top};
      if (std::memcmp(cut, scissor, sizeof cut) != 0) glScissor(cut[0], cut[1], cut[2], cut[3]);
      std::memcpy(scissor, cut, sizeof cut);
      if (command.GetTexID() != bound) {
        bound = command.GetTexID();
        glBindTexture(GL_TEXTURE_2D, name_of(bound));
      }
      if (first_corner + command.VtxOffset != pointed_at) {
        pointed_at = first_corner + command.VtxOffset;
        point_at(pointed_at);
      }
      glDrawElements(GL_TRIANGLES, static_cast<GLsizei>(command.ElemCount),
                     sizeof(ImDrawIdx) == 2 ? GL_UNSIGNED_SHORT : GL_UNSIGNED_INT,
                     reinterpret_cast<const void*>((first_index + command.IdxOffset) * sizeof(ImDrawIdx)));
    }
    first_corner += static_cast<std::size_t>(list->VtxBuffer.Size);
    first_index += static_cast<std::size_t>(list->IdxBuffer.Size);
  }
}

}  // namespace shoalwright::platform
