// SPDX-License-Identifier: MIT
// The page around the planner and the way from its events to the drawing and back, by real events.
import assert from 'node:assert/strict';
import fs from 'node:fs';
import { after, before, describe, test } from 'node:test';
import { Planner, different_pixels, launch, serve, sharpness, sleep } from './harness.mjs';

let browser, server;
before(async () => {
  browser = await launch();
  server = await serve();
});
after(async () => {
  await browser.close();
  await server.close();
});

/** Runs `body` with a fresh planner and closes it, whatever happens. */
async function with_planner(options, body) {
  const planner = await Planner.open(browser, server.url + (options.fragment || ''), options);
  try {
    await body(planner);
  } finally {
    await planner.close();
  }
}

const buffer_size = planner => planner.page.evaluate(() => {
  const { width, height } = document.getElementById('drawing');
  return [width, height];
});

describe('drawing', () => {
  test('nothing is drawn in ten seconds of rest', () => with_planner({}, async planner => {
    await planner.page.mouse.move(640, 790);
    await planner.idle(600);
    const before = await planner.frames();
    assert.ok(before > 0);
    await sleep(10000);
    assert.equal(await planner.frames(), before);
  }));

  for (const ratio of [1, 2]) {
    test(`every device pixel is its own at ratio ${ratio}`, () => with_planner({ ratio }, async planner => {
      assert.deepEqual(await buffer_size(planner), [1280 * ratio, 800 * ratio]);
      const { step, range } = sharpness(await planner.picture(`shell-ratio-${ratio}`));
      assert.ok(range > 120, `only ${range} of brightness between darkest and lightest: is anything drawn?`);
      // Stretching a coarser picture puts a half-tone between two neighbours, so that no step is much over half the range.
      assert.ok(step > 0.75 * range, `largest step ${step} of a range of ${range}`);
    }));
  }

  test('a ratio that changes while running is followed', () => with_planner({}, async planner => {
    const devtools = await planner.context.newCDPSession(planner.page);
    for (const ratio of [1.5, 2, 1.1, 1]) {
      await devtools.send('Emulation.setDeviceMetricsOverride', { width: 1280, height: 800, deviceScaleFactor: ratio, mobile: false });
      await planner.page.mouse.move(600 + 10 * ratio, 700);  // a headless window may tell it with the next frame only
      await planner.page.waitForFunction(ratio => document.getElementById('drawing').width === Math.round(1280 * ratio), ratio, { timeout: 3000 });
      await planner.idle();
      const [width, height] = await buffer_size(planner);
      assert.deepEqual([width, height], [Math.round(1280 * ratio), Math.round(800 * ratio)]);
    }
  }));

  test('a window of 390 px still shows the planner', () => with_planner({ width: 390, height: 844, ratio: 2 }, async planner => {
    assert.deepEqual(await buffer_size(planner), [780, 1688]);
    assert.ok(await planner.page.evaluate(() => document.documentElement.scrollWidth <= window.innerWidth));
    await planner.picture('shell-390');
  }));

  test('a lost context gives the plan as text, and back the identical picture', () => with_planner({ ratio: 2 }, async planner => {
    await planner.page.mouse.move(640, 790);
    await planner.idle(600);
    const before = await planner.picture('shell-context-before');
    await planner.page.evaluate(() => {
      window.lose = document.getElementById('drawing').getContext('webgl2').getExtension('WEBGL_lose_context');
      window.lose.loseContext();
    });
    await planner.in_state('lost');
    assert.ok(await planner.page.isVisible('#plan-text'));
    assert.ok((await planner.plan_text()).length > 20);
    await planner.picture('shell-context-lost');
    await planner.page.mouse.move(600, 700);  // input while there is nothing to draw on
    await sleep(200);
    await planner.page.evaluate(() => window.lose.restoreContext());
    await planner.in_state('running');
    await planner.page.mouse.move(640, 790);
    await planner.idle(600);
    assert.equal(different_pixels(before, await planner.picture('shell-context-after')), 0);
    assert.deepEqual(planner.complaints.filter(line => !line.includes('WebGL')), []);
  }));
});

describe('keyboard', () => {
  test('Tab walks from the skip link through the drawing and out of it, Shift+Tab back', () => with_planner({}, async planner => {
    const walk = async (key, most) => {
      const seen = [];
      while (seen.length < most) {
        await planner.page.keyboard.press(key);
        await planner.idle(40);
        const id = await planner.focus();
        seen.push(id);
        if (id !== 'drawing' && id !== 'field' && seen.includes('drawing')) return seen;
      }
      return assert.fail(`${key} does not leave the drawing: ${seen.join(' ')}`);
    };
    await planner.press('Tab');
    assert.equal(await planner.focus(), 'skip');
    const forth = await walk('Tab', 400);
    assert.equal(forth.at(-1), 'text-back');
    assert.ok(forth.length > 4, forth.join(' '));
    const back = await walk('Shift+Tab', 400);
    assert.equal(back.at(-1), 'skip');
    assert.equal(back.length, forth.length);
  }));

  test('shortcuts of the browser are left to it, undo is ours', () => with_planner({}, async planner => {
    await planner.page.evaluate(() => {
      window.kept = [];
      window.addEventListener('keydown', e => window.kept.push([e.key, e.defaultPrevented]));
    });
    await planner.page.evaluate(() => document.getElementById('drawing').focus());
    for (const [key, ours] of [['Control+Equal', false], ['Control+Minus', false], ['Control+f', false], ['F1', false], ['Control+z', true], ['ArrowDown', true]]) {
      await planner.page.evaluate(() => { window.kept = []; });
      await planner.press(key);
      assert.equal((await planner.page.evaluate(() => window.kept.at(-1)))[1], ours, key);
    }
  }));
});

describe('text fields', () => {
  const field = 'shelf.search';

  test('a click opens a real input over the drawn field, in its font and place', () => with_planner({}, async planner => {
    await planner.click(field);
    assert.equal(await planner.focus(), 'field');
    const drawn = await planner.rect(field);
    const over = await planner.page.evaluate(() => {
      const box = document.getElementById('field').getBoundingClientRect();
      return { x: box.x, y: box.y, width: box.width, height: box.height, font: getComputedStyle(document.getElementById('field')).fontFamily };
    });
    assert.ok(over.x >= drawn.x && over.y >= drawn.y - 1, JSON.stringify({ drawn, over }));
    assert.ok(over.x + over.width <= drawn.x + drawn.width && over.y + over.height <= drawn.y + drawn.height + 1, JSON.stringify({ drawn, over }));
    assert.match(over.font, /^"?Inter/);
    assert.ok(await planner.page.evaluate(() => document.fonts.check('13px Inter')));
  }));

  test('letters set by the page and by the program have the same width', () => with_planner({ ratio: 2 }, async planner => {
    // The same word, first drawn by the program, then by the page's input over it: where ink begins and ends must agree.
    const ink_ends = picture => {
      let first = Infinity, last = -1;
      const dark = i => picture.data[i] + picture.data[i + 1] + picture.data[i + 2];
      const ground = dark(4 * (picture.width * 2 + Math.floor(picture.width / 2)));
      for (let y = 4; y < picture.height - 4; y++)
        for (let x = 0; x < picture.width; x++)
          if (Math.abs(dark(4 * (y * picture.width + x)) - ground) > 300) {
            first = Math.min(first, x);
            last = Math.max(last, x);
          }
      return [first, last];
    };
    await planner.click(field);
    await planner.press('Control+a');
    await planner.type('Hamburgefonstiv 1234');
    await planner.press('End');
    const place = await planner.page.evaluate(() => {
      const { x, y, width, height } = document.getElementById('field').getBoundingClientRect();
      return { x, y, width, height };
    });
    const { PNG } = await import('pngjs');
    const clip = async () => PNG.sync.read(await planner.page.screenshot({ clip: place, caret: 'hide' }));
    const by_page = ink_ends(await clip());
    await planner.press('Enter');
    await planner.page.mouse.move(640, 790);
    await planner.idle(300);
    const by_program = ink_ends(await clip());
    assert.ok(by_page[1] > by_page[0] + 100, `${by_page}`);
    assert.ok(Math.abs(by_page[0] - by_program[0]) <= 2 && Math.abs(by_page[1] - by_program[1]) <= 6, `${by_page} by the page, ${by_program} by the program`);
  }));

  test('typing, Enter keeps it, Escape gives the old text back', () => with_planner({}, async planner => {
    await planner.click(field);
    await planner.press('Control+a');
    await planner.type('tetra');
    assert.equal(await planner.field(), 'tetra');
    await planner.press('Enter');
    assert.equal(await planner.field(), null);
    assert.equal(await planner.focus(), 'drawing');
    await planner.click(field);
    assert.equal(await planner.field(), 'tetra');
    await planner.press('Control+a');
    await planner.type('barb');
    await planner.press('Escape');
    await planner.click(field);
    assert.equal(await planner.field(), 'tetra');
  }));

  test('an input method composes, and what it composed arrives', () => with_planner({}, async planner => {
    await planner.click(field);
    await planner.press('Control+a', 'Delete');
    const devtools = await planner.context.newCDPSession(planner.page);
    await devtools.send('Input.imeSetComposition', { text: 'め', selectionStart: 1, selectionEnd: 1 });
    await devtools.send('Input.imeSetComposition', { text: 'めだ', selectionStart: 2, selectionEnd: 2 });
    await planner.page.keyboard.press('Enter');  // belongs to the input method while it composes
    await devtools.send('Input.insertText', { text: '目高' });
    await planner.idle();
    await planner.press('Enter');
    await planner.click(field);
    assert.match(await planner.field(), /目高$/);
  }));

  test('copy, cut and paste as everywhere', () => with_planner({}, async planner => {
    await planner.click(field);
    await planner.press('Control+a');
    await planner.type('rasbora é');
    await planner.press('Control+a', 'Control+c');
    assert.equal(await planner.clipboard(), 'rasbora é');
    await planner.press('Control+x');
    assert.equal(await planner.field(), '');
    await planner.press('Control+v', 'Control+v');
    assert.equal(await planner.field(), 'rasbora érasbora é');
  }));

  test('a click elsewhere ends the editing and keeps the text', () => with_planner({}, async planner => {
    await planner.click(field);
    await planner.press('Control+a');
    await planner.type('loach');
    await planner.click('tank.front');
    assert.equal(await planner.field(), null);
    await planner.click(field);
    assert.equal(await planner.field(), 'loach');
  }));

  test('a drag that only ends over a field does not open it', () => with_planner({}, async planner => {
    await planner.drag('tank.front', field);
    assert.equal(await planner.field(), null);
  }));
});

describe('pointer', () => {
  test('a drag goes on past the window\'s edge and ends there', () => with_planner({}, async planner => {
    const row = await planner.first('shelf.row');
    const { x, y } = await planner.point(row);
    const plan = (await planner.state()).plan;
    await planner.page.mouse.move(x, y);
    await planner.page.mouse.down();
    await planner.page.mouse.move(x + 40, y + 20, { steps: 4 });
    await planner.idle(60);
    assert.ok((await planner.state()).held, 'nothing is held after pressing and moving');
    await planner.page.mouse.move(-60, y, { steps: 4 });
    await planner.page.mouse.move(-60, 1000, { steps: 4 });
    await planner.idle(60);
    assert.ok((await planner.state()).held, 'it was let go at the edge');
    await planner.page.mouse.up();
    await planner.idle();
    assert.equal((await planner.state()).held, null);
    assert.deepEqual((await planner.state()).plan, plan);
  }));

  test('the wheel with Ctrl, and the page\'s zoom, belong to the browser', () => with_planner({}, async planner => {
    await planner.page.evaluate(() => {
      window.wheels = [];
      window.addEventListener('wheel', e => window.wheels.push(e.defaultPrevented));
    });
    const { x, y } = await planner.point('tank.front');
    await planner.page.mouse.move(x, y);
    await planner.page.mouse.wheel(0, 40);
    await planner.page.keyboard.down('Control');
    await planner.page.mouse.wheel(0, 40);
    await planner.page.keyboard.up('Control');
    await sleep(200);
    assert.deepEqual(await planner.page.evaluate(() => window.wheels), [true, false]);
    const viewport = await planner.page.getAttribute('meta[name=viewport]', 'content');
    assert.doesNotMatch(viewport, /user-scalable|maximum-scale|minimum-scale/);
  }));

  test('a touch opens a field inside the user\'s own event', () => with_planner({ hasTouch: true }, async planner => {
    await planner.page.evaluate(() => {
      window.in_event = null;
      document.getElementById('field').addEventListener('focus', () => { window.in_event = window.event && window.event.type; });
    });
    const { x, y } = await planner.point('shelf.search');
    await planner.page.touchscreen.tap(x, y);
    await planner.idle();
    assert.equal(await planner.focus(), 'field');
    assert.equal(await planner.page.evaluate(() => navigator.userActivation.hasBeenActive), true);
    assert.ok(['focus', 'pointerup'].includes(await planner.page.evaluate(() => window.in_event)));
  }));
});

describe('page', () => {
  const policy = "default-src 'none'; script-src 'self' 'wasm-unsafe-eval'; style-src 'self'; font-src 'self'; img-src 'self' data: blob:; "
    + "connect-src 'self'; worker-src 'self'; manifest-src 'self'; base-uri 'none'; form-action 'none'";

  test('the strict policy is in the page, nothing is inline and nothing offends it', () => with_planner({}, async planner => {
    assert.equal(await planner.page.getAttribute('meta[http-equiv=Content-Security-Policy]', 'content'), policy);
    const inline = await planner.page.evaluate(async () => {
      const source = new DOMParser().parseFromString(await (await fetch('index.html')).text(), 'text/html');
      return [...source.querySelectorAll('style, [style], script:not([src])')].length
        + [...source.querySelectorAll('*')].filter(node => [...node.attributes].some(({ name }) => name.startsWith('on'))).length;
    });
    assert.equal(inline, 0);
    await planner.click('shelf.search');
    await planner.type('a');
    await planner.press('Escape');
    await planner.click('tank.front');
    assert.deepEqual(planner.complaints, []);
    const refused = await planner.page.addScriptTag({ content: 'window.slipped_in = true' }).then(() => planner.page.evaluate(() => !window.slipped_in), () => true);
    assert.ok(refused, 'an inline script was let through');
  }));

  test('only files of its own are loaded, each once, and after that none but the second of the program', () => with_planner({}, async planner => {
    const asked = () => planner.requests.filter(url => !url.endsWith('/icon.svg'));  // the browser asks for the icon when it likes
    assert.ok(planner.requests.every(url => url.startsWith(server.url)), planner.requests.join('\n'));
    assert.equal(new Set(asked()).size, asked().length, planner.requests.join('\n'));
    const loaded = asked().length;
    await planner.click('shelf.search');
    await planner.type('cory');
    await planner.press('Enter');
    await planner.drag('tank.front', { x: 640, y: 700 });
    await sleep(1500);
    const later = asked().slice(loaded);
    assert.ok(later.length === 0 || (later.length === 1 && later[0] === `${server.url}rest.wasm`), later.join('\n'));
  }));

  test('the plan is in the page as text, and the skip link shows it', () => with_planner({}, async planner => {
    assert.ok(await planner.page.evaluate(() => document.querySelector('#plan-text h2').textContent.length > 0));
    await planner.press('Tab', 'Enter');
    assert.equal(await planner.focus(), 'text');
    assert.ok(await planner.page.evaluate(() => document.getElementById('text').getBoundingClientRect().width > 300));
    await planner.picture('shell-text');
    assert.doesNotMatch(planner.page.url(), /#text/);
    await planner.press('Escape');
    assert.equal(await planner.focus(), 'drawing');
    assert.equal(await planner.page.getAttribute('#text a', 'href'), 'licences.html');
  }));

  test('the licences of all that ships are a click away', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const answer = await page.goto(`${server.url}licences.html`);
    assert.equal(answer.status(), 200);
    const text = await page.innerText('body');
    for (const part of ['Dear ImGui', 'stb_truetype', 'JSON for Modern C++', 'zlib', 'Emscripten', 'musl', 'Inter', 'SIL OPEN FONT LICENSE']) assert.ok(text.includes(part), part);
    await context.close();
  });

  test('the page around the drawing follows the theme', async () => {
    for (const colorScheme of ['light', 'dark']) {
      await with_planner({ colorScheme }, async planner => {
        const ground = await planner.page.evaluate(() => getComputedStyle(document.body).backgroundColor);
        assert.equal(ground, colorScheme === 'dark' ? 'rgb(10, 22, 26)' : 'rgb(230, 236, 235)');
      });
    }
  });
});

describe('loading and failing', () => {
  const failed = async (browser, url, options, state = 'failed') => {
    const planner = await Planner.open(browser, url, { wait: false, ...options });
    await planner.in_state(state);
    const page = planner.page;
    return {
      planner,
      what: await page.innerText('#failed-what'),
      do: await page.innerText('#failed-do'),
      link: await page.inputValue('#failed-link'),
      link_shown: await page.isVisible('#failed-link'),
    };
  };

  test('loading shows the megabytes that have come', async () => {
    const context = await browser.newContext();
    const page = await context.newPage();
    const seen = [];
    await page.exposeFunction('progress', text => { seen.push(text); });
    await page.addInitScript(() => document.addEventListener('DOMContentLoaded', () =>
      new MutationObserver(() => window.progress(document.getElementById('loading-amount').textContent))
        .observe(document.getElementById('loading-amount'), { childList: true })));
    await page.goto(server.url);
    await page.waitForFunction(() => document.body.dataset.state === 'running');
    const size = await page.evaluate(() => Number(document.body.dataset.programBytes));
    assert.ok(size > 100000, `the build has not written the program's size: ${size}`);
    const mb = (size / 1e6).toFixed(1);
    assert.equal(seen.at(-1), `${mb} of ${mb} MB`);
    await context.close();
  });

  for (const [name, missing] of [['planner.wasm', 'planner.wasm'], ['planner.js', 'planner.js'], ['the letters', 'faces.bin']]) {
    test(`without ${name} it says so and gives the link of the plan`, async () => {
      const broken = await serve(undefined, { missing: [missing] });
      const { planner, what, do: remedy, link, link_shown } = await failed(browser, `${broken.url}#p=abc`, {});
      assert.ok(what.includes(missing), what);
      assert.match(remedy, /try again/i);
      assert.ok(link_shown);
      assert.equal(link, `${broken.url}#p=abc`);
      await planner.page.click('#failed-copy');
      await planner.page.waitForFunction(() => document.getElementById('failed-copy').textContent === 'Copied');
      assert.equal(await planner.clipboard(), link);
      await planner.picture('shell-failed');
      await planner.close();
      await broken.close();
    });
  }

  test('without WebGL 2 it says so and shows the plan as text', async () => {
    const bare = await launch(['--disable-3d-apis']);
    const { planner, what, do: remedy } = await failed(bare, server.url, {}, 'without-drawing');
    assert.match(what, /WebGL 2/);
    assert.match(remedy, /graphics acceleration/);
    await planner.page.waitForSelector('#plan-text', { state: 'visible' });  // told one frame later
    assert.ok((await planner.plan_text()).length > 20);
    await planner.picture('shell-without-webgl');
    await bare.close();
  });

  test('without SIMD it says so and gives the link of the plan', async () => {
    const { planner, what, link } = await failed(browser, `${server.url}#p=abc`, {
      init: () => { WebAssembly.validate = () => false; },
    });
    assert.match(what, /SIMD/);
    assert.equal(link, `${server.url}#p=abc`);
    assert.equal(await planner.frames(), 0, 'the program was started all the same');
    await planner.close();
  });

  test('the check for SIMD accepts a browser that has it', () => with_planner({}, async planner => {
    // What the page asks the browser to validate must be a real SIMD module: with one byte of its value type changed it is refused.
    const source = fs.readFileSync(new URL('../../web/boot.js', import.meta.url), 'utf8');  // the page's own is shortened
    const list = source.match(/new Uint8Array\(\[([^\]]*)\.\.\.Array\(16\)\.fill\(0\), 11\]\)/)[1].split(',').map(Number).slice(0, -1);
    const module = [...list, ...Array(16).fill(0), 11];
    const [whole, without] = await planner.page.evaluate(bytes => {
      const changed = bytes.slice();
      changed[14] = 0x7f;  // the result is said to be an i32: the body, which leaves a v128, no longer fits
      return [WebAssembly.validate(new Uint8Array(bytes)), WebAssembly.validate(new Uint8Array(changed))];
    }, module);
    assert.deepEqual([whole, without], [true, false]);
  }));

  test('a program that stops gives the link and the plan as a file', () => with_planner({}, async planner => {
    const text = JSON.stringify({ kept: 'to the last' });
    await planner.page.evaluate(text => {
      window.Module.page.keep_draft(text);
      window.Module.page.set_link('#p=last');
      window.Module.onAbort('out of memory');
    }, text);
    await planner.in_state('failed');
    assert.match(await planner.page.innerText('#failed-what'), /stopped/);
    assert.match(await planner.page.inputValue('#failed-link'), /#p=last$/);
    const [download] = await Promise.all([planner.page.waitForEvent('download'), planner.page.click('#failed-save')]);
    assert.equal(download.suggestedFilename(), 'plan.json');
    const chunks = [];
    for await (const chunk of await download.createReadStream()) chunks.push(chunk);
    assert.equal(Buffer.concat(chunks).toString(), text);
  }));
});

describe('kept on the device', () => {
  const keep = async (planner, text, link) => {
    await planner.idle(300);  // the program has told its own plan, and will not again
    await planner.page.evaluate(([text, link]) => {
      window.Module.page.keep_draft(text);
      window.Module.page.set_link(link);
    }, [text, link]);
  };
  const draft = planner => planner.page.evaluate(() => window.Module.page.draft());
  const others = planner => planner.page.evaluate(() => window.Module.page.drafts.others().map(({ text }) => text));
  const start_link = planner => planner.page.evaluate(() => window.Module.page.link_at_start());
  const fresh = () => browser.newContext({ viewport: { width: 900, height: 600 } });

  test('a reload right after an edit finds the plan again, and its own link is not taken for a new one', async () => {
    const context = await fresh();
    const planner = await Planner.open(browser, server.url, { context });
    const plan = fs.readFileSync(new URL('../plans/riverbank.json', import.meta.url), 'utf8');
    await keep(planner, plan, '#p=one');
    await planner.page.reload();
    await planner.running();
    assert.equal(await draft(planner), plan);
    assert.equal(await start_link(planner), '');
    await planner.page.waitForURL(/#p=/);  // written before the reload, or else by the program soon after it
    await context.close();
  });

  test('two tabs keep two plans', async () => {
    const context = await fresh();
    const one = await Planner.open(browser, server.url, { context });
    await keep(one, '{"plan":1}', '#p=one');
    await sleep(500);
    const two = await Planner.open(browser, server.url, { context });
    assert.equal(await draft(two), '', 'the plan of a living tab was taken over');
    await keep(two, '{"plan":2}', '#p=two');
    await keep(one, '{"plan":1,"later":true}', '#p=one-later');
    await sleep(500);
    await Promise.all([one, two].map(tab => tab.page.reload()));
    for (const tab of [one, two]) {
      await tab.page.bringToFront();  // in the background it draws once a second
      await tab.running();
    }
    assert.equal(await draft(one), '{"plan":1,"later":true}');
    assert.equal(await draft(two), '{"plan":2}');
    await context.close();
  });

  test('a new tab goes on where the closed one was', async () => {
    const context = await fresh();
    const one = await Planner.open(browser, server.url, { context });
    await keep(one, '{"plan":1}', '#p=one');
    await sleep(500);
    await one.page.close();
    const two = await Planner.open(browser, server.url, { context });
    assert.equal(await draft(two), '{"plan":1}');
    await context.close();
  });

  test('a friend\'s link does not overwrite what was kept, in a new tab or in the same one', async () => {
    const context = await fresh();
    const one = await Planner.open(browser, server.url, { context });
    await keep(one, '{"plan":"mine"}', '#p=mine');
    await sleep(500);
    await one.page.close();
    const two = await Planner.open(browser, `${server.url}#p=theirs`, { context });
    assert.equal(await start_link(two), '#p=theirs');
    await keep(two, '{"plan":"theirs"}', '#p=theirs');
    await sleep(500);
    assert.ok((await others(two)).includes('{"plan":"mine"}'));
    await two.page.evaluate(() => window.Module.page.leave_draft());  // as the program does before it opens another plan
    await keep(two, '{"plan":"third"}', '#p=third');
    await sleep(500);
    const kept = await others(two);
    assert.ok(kept.includes('{"plan":"mine"}') && kept.includes('{"plan":"theirs"}'), kept.join());
    await context.close();
  });

  test('the address is rewritten at most once a second', () => with_planner({}, async planner => {
    const written = await planner.page.evaluate(async () => {
      const times = [], real = history.replaceState;
      history.replaceState = function (...all) {
        times.push(performance.now());
        return real.apply(history, all);
      };
      for (let i = 0; i < 30; i++) {
        window.Module.page.set_link(`#p=n${i}`);
        await new Promise(resolve => setTimeout(resolve, 80));
      }
      await new Promise(resolve => setTimeout(resolve, 1200));
      return { times, hash: location.hash };
    });
    assert.equal(written.hash, '#p=n29');
    assert.ok(written.times.length >= 2 && written.times.length <= 5, `${written.times.length} times`);
    for (let i = 1; i < written.times.length; i++) assert.ok(written.times[i] - written.times[i - 1] >= 990);
  }));

  test('a device without room says so in one sentence, once', () => with_planner({}, async planner => {
    const said = await planner.page.evaluate(async () => {
      const said = [], page = window.Module.page;
      page.connect({ trouble: text => said.push(text) });
      Storage.prototype.setItem = () => { throw new DOMException('full', 'QuotaExceededError'); };
      for (let i = 0; i < 3; i++) {
        page.keep_draft(`{"plan":${i}}`);
        await new Promise(resolve => setTimeout(resolve, 400));
      }
      return said;
    });
    assert.equal(said.length, 1);
    assert.match(said[0], /^[^.]+\.$/);
  }));

  test('a dropped .json file arrives, another kind gives one sentence', () => with_planner({}, async planner => {
    const got = await planner.page.evaluate(async () => {
      const got = [], page = window.Module.page;
      page.connect({ trouble: text => got.push(text), file: (name, text) => got.push(`${name}: ${text}`) });
      for (const [name, text] of [['plan.json', '{"a":1}'], ['fish.png', 'x']]) {
        const data = new DataTransfer();
        data.items.add(new File([text], name));
        document.getElementById('drawing').dispatchEvent(new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true }));
        await new Promise(resolve => setTimeout(resolve, 100));
      }
      return got;
    });
    assert.equal(got[0], 'plan.json: {"a":1}');
    assert.match(got[1], /\.json/);
    assert.equal(got.length, 2);
  }));

  test('the live region speaks once, after half a second of rest', () => with_planner({}, async planner => {
    const heard = await planner.page.evaluate(async () => {
      const live = document.getElementById('live'), heard = [];
      new MutationObserver(() => heard.push(live.textContent)).observe(live, { childList: true });
      for (const text of ['one', 'two', 'three']) {
        window.Module.page.say(text);
        await new Promise(resolve => setTimeout(resolve, 150));
      }
      const early = heard.length;
      await new Promise(resolve => setTimeout(resolve, 700));
      return { early, heard };
    });
    assert.deepEqual(heard, { early: 0, heard: ['three'] });
  }));

  test('the plan\'s text is never read as HTML, and unchanged parts stay in place', () => with_planner({}, async planner => {
    const result = await planner.page.evaluate(() => {
      const region = document.getElementById('plan-text'), page = window.Module.page;
      page.set_plan_text('# Plan\n<img src=x onerror=alert(1)>\n## Stock\n| Fish | Count |\n| A | 1 |\n## End\n- last');
      const title = region.querySelector('h2'), last = region.querySelector('ul');
      page.set_plan_text('# Plan\n<img src=x onerror=alert(1)>\n## Stock\n| Fish | Count |\n| A | 2 |\n| B | 3 |\n## End\n- last');
      return {
        images: region.querySelectorAll('img').length, cells: [...region.querySelectorAll('td')].map(cell => cell.textContent),
        stays: title === region.querySelector('h2') && last === region.querySelector('ul'), text: region.innerText.includes('<img'),
      };
    });
    assert.deepEqual(result, { images: 0, cells: ['A', '2', 'B', '3'], stays: true, text: true });
  }));
});
