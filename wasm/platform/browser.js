// SPDX-License-Identifier: MIT
// Emscripten JS library: the page's events in, calls of browser.cpp out. ES2017 only, since the optimiser of older Emscripten reads no
// newer syntax. What the page offers besides the drawing (drafts, address, text form, files) lives in web/ and is reached by name.
mergeInto(LibraryManager.library, {
  $shell: {
    canvas: null,
    field: null,
    timer: 0,
    cursor: '',
    before: '',       // the open field's text when editing began
    open: false,      // the field lies over the drawing
    from: 0,          // direction of the Tab that may be bringing the keyboard to the drawing
    measure: null,
    ratio: 0,         // device pixel ratio as last measured
    line_to_em: 0,    // CSS font size over Dear ImGui's, which is the line height of the font; 0: not measured yet

    put: function (text) {
      var bytes = lengthBytesUTF8(text) + 1;
      stringToUTF8(text, _page_room(bytes - 1), bytes);
    },
    event: function (what, text) {
      shell.put(text);
      _page_event(what);
    },
    modifiers: function (e) {
      return (e.ctrlKey ? 1 : 0) | (e.shiftKey ? 2 : 0) | (e.altKey ? 4 : 0) | (e.metaKey ? 8 : 0);
    },
    // Ends the editing of the open field; `what` as in page_field.
    end: function (what) {
      if (!shell.open) return;
      shell.open = false;
      if (what === 2) shell.field.value = shell.before;
      shell.put(shell.field.value);
      _page_field(what);
      if (document.activeElement === shell.field) shell.to_canvas();  // before it is hidden, or the keyboard would go to the page
      shell.field.hidden = true;
    },
    em_of: function (line_px) {
      var probe = shell.line_to_em || !document.fonts.check('100px Inter') ? null : document.createElement('canvas').getContext('2d');
      if (probe) {
        probe.font = '100px Inter';
        var letters = probe.measureText('x');
        var line = letters.fontBoundingBoxAscent + letters.fontBoundingBoxDescent;
        if (line > 0) shell.line_to_em = 100 / line;
      }
      return line_px * (shell.line_to_em || 1);
    },
    to_canvas: function () {
      shell.from = 0;
      shell.canvas.focus({ preventScroll: true });
    },
  },
  // Newer Emscripten has the string functions in a library, older in every program.
  $shell__deps: ['$UTF8ToString', '$stringToUTF8', '$lengthBytesUTF8'].filter(function (name) { return name in LibraryManager.library; }),

  browser_number__deps: ['$UTF8ToString'].filter(function (name) { return name in LibraryManager.library; }),
  browser_number: function (text, bytes) { return Number(UTF8ToString(text, bytes)); },

  browser_listen__deps: ['$shell'],
  browser_listen: function () {
    var canvas = (shell.canvas = document.getElementById('drawing'));
    var field = (shell.field = document.getElementById('field'));
    var page = Module['page'];

    // Size: CSS pixels for the layout, whole device pixels for the buffer. Where the browser tells the device pixels we take its word:
    // at ratios like 1.1 rounding by ourselves can be one off, which blurs everything. Only there: an emulated ratio is not in it.
    var measure = (shell.measure = function (entries) {
      var box = canvas.getBoundingClientRect();
      var ratio = (shell.ratio = window.devicePixelRatio || 1);
      var told = entries && entries.length && entries[entries.length - 1].devicePixelContentBoxSize;
      var pixels = function (css, told) {
        var own = Math.round(css * ratio);
        return Math.max(1, told !== undefined && Math.abs(told - own) <= 1 ? told : own);
      };
      var width = pixels(box.width, told ? told[0].inlineSize : undefined);
      var height = pixels(box.height, told ? told[0].blockSize : undefined);
      if (canvas.width !== width) canvas.width = width;
      if (canvas.height !== height) canvas.height = height;
      _page_size(box.width, box.height, width, height);
    });
    var observer = new ResizeObserver(measure);
    try {
      observer.observe(canvas, { box: 'device-pixel-content-box' });
    } catch (e) {
      observer.observe(canvas);
    }
    (function watch_ratio() {  // a ratio that changes alone resizes nothing in browsers without that box
      matchMedia('(resolution: ' + window.devicePixelRatio + 'dppx)').addEventListener('change', function () { measure(); watch_ratio(); }, { once: true });
    })();
    measure();

    var wishes = ['(prefers-color-scheme: dark)', '(prefers-reduced-motion: reduce)', '(prefers-contrast: more)', '(forced-colors: active)', '(pointer: coarse)']
      .map(function (query) { return matchMedia(query); });
    var device = function () {
      var bits = 0;
      wishes.forEach(function (wish, i) { if (wish.matches) bits |= 1 << i; });
      if (/Mac|iPhone|iPad/.test(navigator.platform)) bits |= 32;
      if (document.hidden) bits |= 64;
      _page_device(bits);
    };
    wishes.forEach(function (wish) { wish.addEventListener('change', device); });
    document.addEventListener('visibilitychange', device);
    window.addEventListener('pageshow', function () { _page_wake(3); });
    device();

    // Pointer events. Capture keeps a drag alive outside the window. One finger points; two of them spread and close: that is the
    // wheel where their middle is, and the middle button, by which they draw along what is under them.
    var at = function (e) {
      var box = canvas.getBoundingClientRect();
      return [e.clientX - box.left, e.clientY - box.top];
    };
    var fingers = {}, span = 0;
    var pinch = function (e, point) {
      if (e.type === 'pointerdown' || fingers[e.pointerId]) fingers[e.pointerId] = point;
      if (e.type === 'pointerup' || e.type === 'pointercancel') delete fingers[e.pointerId];
      var down = Object.keys(fingers);
      var was = span > 0;
      if (down.length !== 2) {
        if (was && !down.length) {
          span = 0;
          _page_pointer(1, 1, 0, 0, 0, 0);  // nothing hovers under lifted fingers
        }
        return was;
      }
      var a = fingers[down[0]], b = fingers[down[1]], now = Math.hypot(a[0] - b[0], a[1] - b[1]);
      if (!was) _page_pointer(1, 1, a[0], a[1], 0, 0);
      _page_pointer(0, 1, (a[0] + b[0]) / 2, (a[1] + b[1]) / 2, 4, 0);
      if (was && now > 0) _page_wheel(0, Math.log(now / span) / Math.log(1.25), 0);
      span = now;
      return true;
    };
    var pointer = function (kind) {
      return function (e) {
        var point = at(e);
        if (e.pointerType === 'touch' && pinch(e, point)) return;
        if (!e.isPrimary) return;
        if (e.type === 'pointerdown') {
          canvas.setPointerCapture(e.pointerId);
          if (document.activeElement !== canvas) shell.to_canvas();
        }
        _page_pointer(kind, e.pointerType === 'touch' ? 1 : 0, point[0], point[1], kind ? 0 : e.buttons, shell.modifiers(e));
      };
    };
    ['pointermove', 'pointerdown', 'pointerup'].forEach(function (type) { canvas.addEventListener(type, pointer(0)); });
    ['pointercancel', 'pointerleave'].forEach(function (type) { canvas.addEventListener(type, pointer(1)); });
    canvas.addEventListener('mousedown', function (e) { e.preventDefault(); });  // the keyboard stays where we put it
    canvas.addEventListener('contextmenu', function (e) { e.preventDefault(); });
    var wheel = function (e) {
      if (e.ctrlKey) return;  // zooming the page belongs to the browser
      e.preventDefault();
      var unit = e.deltaMode === 1 ? 1 / 3 : e.deltaMode === 2 ? 1 : 1 / 100;  // lines, pages, pixels
      _page_wheel(-e.deltaX * unit, -e.deltaY * unit, shell.modifiers(e));
    };
    canvas.addEventListener('wheel', wheel, { passive: false });
    field.addEventListener('wheel', wheel, { passive: false });

    // Keys, only while the drawing or nothing at all has the keyboard. What page_key does not want stays the browser's.
    var key = function (down) {
      return function (e) {
        if (e.isComposing || e.keyCode === 229 || (down && e.getModifierState('AltGraph'))) return;
        shell.put(e.code + '\n' + e.key);
        if (_page_key(down, shell.modifiers(e))) e.preventDefault();
      };
    };
    canvas.addEventListener('keydown', key(1));
    canvas.addEventListener('keyup', key(0));
    document.body.addEventListener('keydown', function (e) {  // nothing on the page has the keyboard: it is the drawing's, but for Tab
      if (e.target !== document.body || e.key === 'Tab' || document.body.dataset.state !== 'running') return;
      shell.to_canvas();
      key(1)(e);
    });
    window.addEventListener('keydown', function (e) { shell.from = e.key === 'Tab' ? (e.shiftKey ? -1 : 1) : 0; }, true);
    window.addEventListener('pointerdown', function () { shell.from = 0; }, true);
    canvas.addEventListener('focus', function () { _page_focus(1, shell.from); });
    canvas.addEventListener('blur', function (e) {
      // The body is the active element by now: only relatedTarget says where the keyboard goes.
      if (e.relatedTarget !== field) _page_focus(0, 0);
    });

    // The field laid over the drawn one.
    field.addEventListener('input', function () {
      if (!shell.open) return;
      shell.put(field.value);
      _page_field(0);
    });
    field.addEventListener('keydown', function (e) {
      if (e.isComposing || e.keyCode === 229) return;
      if (e.key === 'Enter' || e.key === 'Escape') {
        e.preventDefault();
        shell.end(e.key === 'Enter' ? 1 : 2);
      } else if (e.key === 'Tab') {  // on to the next item of the drawing, or out of it
        shell.end(1);
        key(1)(e);
        shell.put('Tab\nTab');
        _page_key(0, 0);
      } else if (e.key === 'ArrowUp' || e.key === 'ArrowDown') {
        e.preventDefault();
        shell.put(field.value);
        _page_field(e.key === 'ArrowUp' ? 3 : 4);
      }
    });
    field.addEventListener('blur', function (e) {
      shell.end(1);
      if (e.relatedTarget !== canvas) _page_focus(0, 0);
    });

    // Copy, cut and paste by key or by the browser's menu: no permission is asked and every browser allows it inside these events.
    var on_canvas = function () { return document.activeElement === canvas; };
    var hand_over = function (letter) {
      return function (e) {
        if (!on_canvas() || !_page_copy(letter)) return;
        e.clipboardData.setData('text/plain', UTF8ToString(_page_text()));
        e.preventDefault();
      };
    };
    document.addEventListener('copy', hand_over(67));
    document.addEventListener('cut', hand_over(88));
    document.addEventListener('paste', function (e) {
      if (!on_canvas()) return;
      e.preventDefault();
      shell.event(2, e.clipboardData.getData('text/plain'));
    });

    canvas.addEventListener('webglcontextlost', function (e) {
      e.preventDefault();  // or the browser would not give it back
      _page_context(0);
      page['drawing_lost'](true);
    });
    canvas.addEventListener('webglcontextrestored', function () {
      _page_context(1);
      page['drawing_lost'](false);
    });

    page['connect']({
      link: function (text) { shell.event(0, text); },
      file: function (name, text) { shell.event(1, name.replace(/\n/g, ' ') + '\n' + text); },
      trouble: function (text) { shell.event(3, text); },
      action: function (text) { shell.event(4, text); },
      rest: function () { shell.event(5, ''); },
    });
  },

  // After a lost context the glue's tables hold dead objects: forgotten here, or deleting them would warn for each.
  browser_forget_gl__deps: ['$GL'],
  browser_forget_gl: function () {
    [GL.buffers, GL.programs, GL.textures, GL.vaos, GL.shaders].forEach(function (table) { for (var i in table) table[i] = null; });
  },

  browser_cursor__deps: ['$shell'],
  browser_cursor: function (css) {
    var cursor = UTF8ToString(css);
    if (cursor === shell.cursor) return;
    shell.cursor = cursor;
    shell.canvas.style.cursor = cursor;
  },

  browser_timer__deps: ['$shell'],
  browser_timer: function (ms) {
    clearTimeout(shell.timer);
    shell.timer = setTimeout(function () { _page_wake(1); }, ms);
  },

  browser_drawn__deps: ['$shell'],
  browser_drawn: function () {
    if (window.devicePixelRatio !== shell.ratio) shell.measure();  // not every browser tells every change
    var page = Module['page'];
    page['frames'] = (page['frames'] || 0) + 1;
    page['drawn_ms'] = performance.now();
  },

  browser_tell__deps: ['$shell'],
  browser_tell: function (service, a, b) { Module['page'][UTF8ToString(service)](UTF8ToString(a), UTF8ToString(b)); },
  browser_ask__deps: ['$shell'],
  browser_ask: function (service, a) { shell.put(Module['page'][UTF8ToString(service)](UTF8ToString(a))); },

  browser_asset_size: function (name) {
    var bytes = Module['page']['assets'][UTF8ToString(name)];
    return bytes ? bytes.length : 0;
  },
  browser_asset_copy: function (name, to) { HEAPU8.set(Module['page']['assets'][UTF8ToString(name)], to); },

  browser_field_open__deps: ['$shell'],
  browser_field_open: function (id, label, value, placeholder, kind, most) {
    var field = shell.field;
    shell.end(1);
    field.value = shell.before = UTF8ToString(value);
    field.maxLength = most;
    field.placeholder = UTF8ToString(placeholder);
    field.setAttribute('aria-label', UTF8ToString(label));
    field.dataset.id = UTF8ToString(id);
    field.inputMode = kind === 1 ? 'search' : kind === 2 ? 'decimal' : 'text';
    field.enterKeyHint = kind === 1 ? 'search' : 'done';
    field.hidden = false;
    shell.open = true;
    field.focus({ preventScroll: true });
    field.select();
  },

  browser_field_place__deps: ['$shell'],
  browser_field_place: function (x, y, width, height, line_px, ink, placeholder_ink, weight, align_right) {
    var style = shell.field.style;
    var css = function (colour) {
      return 'rgba(' + (colour & 255) + ',' + ((colour >> 8) & 255) + ',' + ((colour >> 16) & 255) + ',' + (colour >>> 24) / 255 + ')';
    };
    // Phones zoom the page into inputs under 16 px: there the input is set at 16 px and scaled down.
    var em = shell.em_of(line_px);
    var set = matchMedia('(pointer: coarse)').matches && em < 16 ? 16 : em;
    var scale = em / set;
    style.left = x + 'px';
    style.top = y + 'px';
    style.width = width / scale + 'px';
    style.height = height / scale + 'px';
    style.lineHeight = height / scale + 'px';
    style.transform = scale === 1 ? '' : 'scale(' + scale + ')';
    style.fontSize = set + 'px';
    style.fontWeight = weight;
    style.textAlign = align_right ? 'right' : 'left';
    style.color = css(ink);
    style.setProperty('--placeholder', css(placeholder_ink));
  },

  browser_field_close__deps: ['$shell'],
  browser_field_close: function () { shell.end(1); },
});
