// SPDX-License-Identifier: MIT
// What Dear ImGui's renderer asks WebGL about its state, answered here. It asks before each frame so as to put everything back
// after it; but nothing else draws on this canvas, and each question to the browser waits until all drawing so far is done
// (measured: 100 ms a frame on a software rasteriser). The answers are a fresh context's state, which is as good to go back to as
// any. The build gives the renderer these functions in place of the GL's (CMakeLists.txt beside this folder).
#include <emscripten/console.h>
#include <GLES3/gl3.h>

#include <cstdarg>
#include <cstdio>
#include <cstring>

extern "C" {

void shoalwright_gl_integer(GLenum what, GLint* answer) {
  switch (what) {
    case GL_ACTIVE_TEXTURE: *answer = GL_TEXTURE0; return;
    case GL_BLEND_SRC_RGB:
    case GL_BLEND_SRC_ALPHA: *answer = GL_ONE; return;
    case GL_BLEND_EQUATION_RGB:
    case GL_BLEND_EQUATION_ALPHA: *answer = GL_FUNC_ADD; return;
    case GL_MAJOR_VERSION: *answer = 3; return;
    case GL_VIEWPORT:
    case GL_SCISSOR_BOX: answer[0] = answer[1] = answer[2] = answer[3] = 0; return;
    case GL_BLEND_DST_RGB:
    case GL_BLEND_DST_ALPHA:
    case GL_MINOR_VERSION:
    case GL_CURRENT_PROGRAM:
    case GL_TEXTURE_BINDING_2D:
    case GL_SAMPLER_BINDING:
    case GL_ARRAY_BUFFER_BINDING:
    case GL_ELEMENT_ARRAY_BUFFER_BINDING:
    case GL_PIXEL_UNPACK_BUFFER_BINDING:
    case GL_VERTEX_ARRAY_BINDING: *answer = 0; return;
    default: glGetIntegerv(what, answer);
  }
}

GLboolean shoalwright_gl_is_enabled(GLenum) { return GL_FALSE; }

// Whether the two shaders compiled: asking would wait for it, and with the same text everywhere the answer is yes or no WebGL 2
// at all.
void shoalwright_gl_shader(GLuint, GLenum what, GLint* answer) { *answer = what == GL_COMPILE_STATUS ? GL_TRUE : 0; }
void shoalwright_gl_program(GLuint, GLenum what, GLint* answer) { *answer = what == GL_LINK_STATUS ? GL_TRUE : 0; }

const GLubyte* shoalwright_gl_string(GLenum what) {
  return reinterpret_cast<const GLubyte*>(what == GL_VERSION ? "OpenGL ES 3.0" : "");
}

// The one thing it reads out of a text is the shader language that browser.cpp names: an answer saves the reading of formatted
// numbers.
int shoalwright_scanned(const char*, const char* format, ...) {
  va_list args;
  va_start(args, format);
  *va_arg(args, int*) = 300;
  va_end(args);
  return 1;
}

// What a shader's compiler says is told as it is, of other lines their pattern: formatted printing would be 2 KB of the download.
int shoalwright_reported(FILE*, const char* format, ...) {
  va_list args;
  va_start(args, format);
  emscripten_console_error(std::strcmp(format, "%s\n") == 0 ? va_arg(args, const char*) : format);
  va_end(args);
  return 0;
}
}
