// SPDX-License-Identifier: MIT
// The keeper's own way through the planner, by real mouse and keyboard: choose a tank, drag fish in, see the numbers answer, take it
// back, send it to a friend.
import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { Planner, different_pixels, serve, sleep, sound_planners } from './harness.mjs';

const { stage, with_planner } = sound_planners();

const count_of = (plan, species) => plan.stock.filter(group => group.species === species).reduce((sum, group) => sum + group.count, 0);
const rules = assessment => assessment.findings.map(finding => finding.rule);

/** Types into the shelf's search and waits for the row. */
async function find_on_shelf(planner, words, species) {
  await planner.press('/');
  await planner.type(words);
  await planner.press('Enter');
  await planner.idle(300);
  assert.ok((await planner.state()).rects[`shelf.row/${species}`], `"${words}" does not show ${species}`);
}

describe('a keeper at a desk', () => {
  test('the demo opens with four groups and nothing to fix', () => with_planner({}, async planner => {
    const { plan, assessment } = await planner.state();
    assert.equal(plan.name, 'Reading-room riverbank');
    assert.equal(plan.stock.length, 4);
    assert.equal(plan.pieces.length, 6);
    assert.deepEqual(assessment.findings.filter(finding => ['harm', 'strain'].includes(finding.severity)), []);
  }));

  test('a stone is dragged from the shelf into the view from above, moved, turned by a key and taken back', () => with_planner({}, async planner => {
    const start = (await planner.state()).plan;
    await planner.click('shelf.part/1');
    await planner.drag('shelf.piece/stone', 'tank.above');
    const put = (await planner.state()).plan;
    assert.equal(put.pieces.length, 7);
    const stone = put.pieces[6];
    assert.equal(stone.kind, 'stone');
    assert.ok(Math.abs(stone.x_cm - 44) < 2 && Math.abs(stone.z_cm - 22) < 2, 'it lies where it was let go');
    const from = await planner.point('above.piece/6');
    await planner.drag(from, { x: from.x + 60, y: from.y + 20 });
    await planner.press('r', 'ArrowLeft');
    const moved = (await planner.state()).plan.pieces[6];
    assert.ok(moved.x_cm > stone.x_cm + 5 && moved.z_cm < stone.z_cm - 2, 'the view from above moves it along and across');
    assert.equal(moved.turn_deg, 15);
    for (let i = 0; i < 4; i++) await planner.press('Control+z');
    assert.deepEqual((await planner.state()).plan, start, 'four steps, four times undo');
  }));

  test('a wall of blocks takes the lane; the front view moves a block and the lane is back', () => with_planner({}, async planner => {
    await planner.press('Escape');
    await planner.click('shelf.part/1');
    const lane = async () => (await planner.state()).assessment.room.layers[2].lane_cm;
    const whole = await lane();
    await planner.drag('shelf.piece/stone-slab', 'tank.above');
    await planner.press('r', 'r', 'r', 'r', 'r', 'r');
    for (const direction of ['ArrowDown', 'ArrowDown']) await planner.press('Shift+' + direction);
    const slab = (await planner.state()).plan.pieces[6];
    assert.equal(slab.turn_deg, 90);
    assert.ok(await lane() <= whole + 1e-9, 'a slab never makes a lane longer');
    const { x, y } = await planner.point('tank.piece/6');
    await planner.drag({ x, y: y + 20 }, { x: x - 120, y: y + 20 });
    assert.ok((await planner.state()).plan.pieces[6].x_cm < slab.x_cm - 8, 'the front view moves it along the tank');
    await planner.press('Delete');
    assert.equal((await planner.state()).plan.pieces.length, 6);
    assert.equal(await lane(), whole);
  }));

  test('fish dragged from the shelf into the tank are previewed, dropped, and taken back', () => with_planner({}, async planner => {
    const start = await planner.state();
    await find_on_shelf(planner, 'cherry', 'rohanella-titteya');
    await planner.drag('shelf.row/rohanella-titteya', 'tank.front', {
      before_drop: async () => {
        const held = await planner.state();
        assert.equal(held.held.species, 'rohanella-titteya');
        assert.ok(held.held.count >= 5, 'the hand holds a good group, not one');
        assert.match(held.previewing, /^If you drop \d+ here$/);
        assert.deepEqual(held.assessment, start.assessment, 'the plan itself has not changed yet');
        assert.ok(held.shown.load.feed_g_d > start.assessment.load.feed_g_d, 'what is shown feeds more mouths');
        await planner.picture('planner-held');
      },
    });
    const dropped = await planner.state();
    assert.equal(dropped.held, null);
    assert.ok(count_of(dropped.plan, 'rohanella-titteya') >= 5);
    assert.ok(dropped.assessment.room.layers[1].crowding > start.assessment.room.layers[1].crowding);
    await planner.press('Control+z');
    const undone = await planner.state();
    assert.deepEqual(undone.plan, start.plan);
    assert.deepEqual(undone.assessment, start.assessment);
    await planner.press('Control+Shift+z');
    assert.deepEqual((await planner.state()).plan, dropped.plan);
  }));

  test('Escape and letting go outside put the fish back', () => with_planner({}, async planner => {
    const start = await planner.state();
    const row = await planner.first('shelf.row/');
    await planner.drag(row, 'tank.front', { before_drop: () => planner.press('Escape') });
    assert.deepEqual((await planner.state()).plan, start.plan);
    await planner.drag(row, { x: 200, y: 890 });
    assert.deepEqual((await planner.state()).plan, start.plan);
  }));

  test('what is laid over the tank is chosen, kept and told where the pointer is', () => with_planner({}, async planner => {
    const plain = await planner.picture('planner-no-overlay');
    const pictures = [];
    for (const [i, name] of ['crowding', 'clearance', 'cover', 'territory'].entries()) {
      await planner.click('tool.overlay');
      await planner.click(`tool.overlay/${i + 1}`);
      await planner.page.mouse.move(5, 5);
      await planner.idle(250);
      pictures.push(await planner.picture(`planner-${name}`));
    }
    assert.ok(different_pixels(plain, pictures[0]) > 2000 && different_pixels(pictures[0], pictures[1]) > 2000 && different_pixels(pictures[1], pictures[2]) > 2000);
    await planner.press('c');
    await planner.page.mouse.move(5, 5);
    await planner.idle(250);
    assert.ok(different_pixels(await planner.picture('planner-crowding-by-key'), pictures[0]) < 1500, 'C lays crowding over it');
    const tank = await planner.rect('tank.front');
    await planner.page.mouse.move(tank.x + tank.width * 0.45, tank.y + tank.height * 0.5);
    await planner.idle(250);
    assert.ok(different_pixels(await planner.picture('planner-spot'), pictures[0]) > 1500, 'the spot under the pointer is told');
  }));

  test('the wheel brings the tank nearer about the pointer, Fit shows the whole of it', () => with_planner({}, async planner => {
    const before = await planner.rect('tank.piece/2');
    await planner.page.mouse.move(before.x + before.width / 2, before.y + before.height / 2);
    for (let i = 0; i < 3; i++) await planner.page.mouse.wheel(0, -100);
    await planner.idle(250);
    const near = await planner.rect('tank.piece/2');
    assert.ok(near.width > before.width * 1.8, `${before.width} grew to ${near.width} only`);
    assert.ok(Math.abs(near.x + near.width / 2 - before.x - before.width / 2) < before.width / 2, 'what is under the pointer stays there');
    // A piece is moved there as far as the pointer goes.
    const { plan } = await planner.state();
    await planner.page.mouse.down();
    await planner.page.mouse.move(before.x + before.width / 2 + 60, before.y + before.height / 2, { steps: 6 });
    await planner.page.mouse.up();
    await planner.idle(250);
    const moved = (await planner.state()).plan;
    assert.notDeepEqual(moved.pieces, plan.pieces);
    await planner.press('Control+z');
    await planner.click('tank.fit');
    await planner.idle(250);
    assert.ok(Math.abs((await planner.rect('tank.piece/2')).width - before.width) < 1);
    await planner.press('z');
    assert.ok((await planner.rect('tank.piece/2')).width > before.width * 1.1, 'Z does the same');
  }));

  test('two fingers bring the tank nearer and draw it along, and change nothing in the plan', () => with_planner({ width: 390, height: 844, hasTouch: true }, async planner => {
    const { plan } = await planner.state();
    const before = await planner.rect('tank.piece/2'), tank = await planner.rect('tank.front');
    const x = tank.x + tank.width / 2, y = tank.y + tank.height / 2;
    const hand = await planner.context.newCDPSession(planner.page);
    const touch = (type, ...places) => hand.send('Input.dispatchTouchEvent', { type, touchPoints: places.map((at, id) => ({ x: at, y, id })) });
    await touch('touchStart', x - 20);
    await touch('touchStart', x - 20, x + 20);
    for (let i = 1; i <= 8; i++) await touch('touchMove', x - 20 - 8 * i, x + 20 + 8 * i);
    await touch('touchEnd');
    await planner.idle(250);
    const near = await planner.rect('tank.piece/2');
    assert.ok(near.height > before.height * 1.8);
    await touch('touchStart', x - 20);
    await touch('touchStart', x - 20, x + 20);
    for (let i = 1; i <= 8; i++) await touch('touchMove', x - 20 + 4 * i, x + 20 + 4 * i);
    await touch('touchEnd');
    await planner.idle(250);
    const along = await planner.rect('tank.piece/2');
    const right = box => box.x + box.width;  // its left is out of sight
    assert.ok(Math.abs(right(along) - right(near) - 32) < 3 && Math.abs(along.height - near.height) < 1, `${right(near)} to ${right(along)}`);
    assert.deepEqual((await planner.state()).plan, plan);
    await planner.click('tank.fit');
    assert.ok(Math.abs((await planner.rect('tank.piece/2')).height - before.height) < 1);
  }));

  test('the second file of the program comes when something of it is first wanted', async () => {
    const asked = planner => planner.requests.filter(url => url.endsWith('/rest.wasm')).length;
    await with_planner({}, async planner => {
      assert.equal(asked(planner), 0, 'it is no part of the first visit');
      const plain = await planner.picture('planner-before-rest');
      await planner.press('c');
      await planner.page.waitForFunction(() => document.body.dataset.rest === 'here');
      await planner.idle(300);
      assert.ok(different_pixels(plain, await planner.picture('planner-after-rest')) > 2000, 'crowding is laid over the tank');
      await planner.press('c', 'c');
      assert.equal(asked(planner), 1, 'it comes once');
    });
    const broken = await serve(undefined, { missing: ['rest.wasm'] });
    const planner = await Planner.open(stage.browser, broken.url, { width: 1440, height: 900 });
    await planner.press('c');
    await planner.page.waitForFunction(() => document.body.dataset.rest === 'missing');
    await planner.page.waitForFunction(() => document.getElementById('live').textContent.includes('could not be loaded'));
    await planner.press('c');
    await planner.click('top.undo').catch(() => {});
    assert.equal(await planner.page.evaluate(() => document.body.dataset.state), 'running', 'the rest of it goes on');
    await planner.close();
    await broken.close();
  });

  test('fish swim while Swim is on, and stand still under reduced motion', async () => {
    await with_planner({}, async planner => {
      const at = await planner.rect('tool.swim');
      await planner.page.mouse.click(at.x + at.width / 2, at.y + at.height / 2);
      await planner.page.waitForFunction(() => document.body.dataset.rest === 'here');
      await planner.page.waitForTimeout(600);
      const one = await planner.frames();
      const rect = (await planner.state()).rects['tank.fish/trigonostigma-heteromorpha'];
      await planner.page.waitForTimeout(1500);
      assert.ok(await planner.frames() > one + 10, 'it goes on drawing');
      assert.notDeepEqual((await planner.state()).rects['tank.fish/trigonostigma-heteromorpha'], rect);
      await planner.page.mouse.click(at.x + at.width / 2, at.y + at.height / 2);
      await planner.idle(300);
    });
    await with_planner({ reducedMotion: 'reduce' }, async planner => {
      await planner.click('tool.swim');
      await planner.idle(300);
    });
  });

  test('numbers of a file arrive to the last figure', () => with_planner({}, async planner => {
    const { plan } = await planner.state();
    const odd = [88.45, 1e-3, 12.345678901234567, 4.35e1, 0.1, 30.000000000000004];
    plan.pieces = odd.map(x_cm => ({ kind: 'stone', x_cm, z_cm: 20, base_cm: 0, length_cm: 5, depth_cm: 5, height_cm: 5, turn_deg: 0, mirror: false }));
    await planner.page.evaluate(text => {
      const transfer = new DataTransfer();
      transfer.items.add(new File([text], 'odd.json', { type: 'application/json' }));
      document.getElementById('drawing').dispatchEvent(new DragEvent('drop', { dataTransfer: transfer, bubbles: true, cancelable: true }));
    }, JSON.stringify(plan));
    await planner.page.waitForFunction(() => JSON.parse(window.UTF8ToString(window.Module._state_json())).plan.pieces[0].kind === 'stone');
    assert.deepEqual((await planner.state()).plan.pieces.map(piece => piece.x_cm), odd);
  }));

  test('the same by keyboard alone: search, pick up, number, drop', () => with_planner({}, async planner => {
    await planner.press('/');
    await planner.type('gastrodermus pygmaeus');
    await planner.press('Enter');
    // Past the clear button, what narrows the shelf down and its order.
    for (let i = 0; i < 30 && !(await planner.state()).held; i++) await planner.press('Tab', ...(i >= 12 ? ['Enter'] : []));
    const { held } = await planner.state();
    assert.equal(held?.species, 'gastrodermus-pygmaeus');
    await planner.press('+', '+', 'ArrowRight');
    assert.equal((await planner.state()).held.count, held.count + 2);
    await planner.press('Enter');
    assert.equal(count_of((await planner.state()).plan, 'gastrodermus-pygmaeus'), held.count + 2);
  }));

  test('a stepper changes a group, and what follows moves with it', () => with_planner({}, async planner => {
    const start = await planner.state();
    await planner.click('stock.count/trigonostigma-heteromorpha/more');
    const more = await planner.state();
    assert.equal(count_of(more.plan, 'trigonostigma-heteromorpha'), 11);
    assert.ok(more.assessment.load.nitrate_peak_mg_l > start.assessment.load.nitrate_peak_mg_l);
    assert.notEqual(await planner.page.evaluate(() => location.hash), '');
  }));

  test('another tank from the chooser', () => with_planner({}, async planner => {
    const start = await planner.state();
    await planner.click('top.size');
    await planner.picture('planner-tank-sheet');
    const sizes = Object.keys((await planner.state()).rects).filter(id => id.startsWith('tank_sheet.size/'));
    assert.ok(sizes.length >= 3, `sizes: ${sizes}`);
    await planner.click(sizes[0]);
    const changed = await planner.state();
    assert.notEqual(changed.plan.tank.length_cm, start.plan.tank.length_cm);
    assert.notEqual(changed.assessment.volume.net_l, start.assessment.volume.net_l);
    await planner.press('Escape');
    await planner.press('Control+z');
    assert.deepEqual((await planner.state()).plan.tank, start.plan.tank);
  }));

  test('a tap takes a tank, though the finger was never there before', () => with_planner({ hasTouch: true }, async planner => {
    const tap = async id => {
      const { x, y } = await planner.point(id);
      await planner.page.touchscreen.tap(x, y);
      await planner.idle();
    };
    await tap('top.size');
    await tap(await planner.first('tank_sheet.size/'));
    assert.ok((await planner.state()).plan.tank.length_cm < 60, 'the first of the usual sizes');
    await planner.press('Escape');
    await tap('stock.count/trigonostigma-heteromorpha/more');
    assert.equal(count_of((await planner.state()).plan, 'trigonostigma-heteromorpha'), 11);
    await tap(await planner.first('shelf.row/'));
    assert.ok((await planner.state()).held, 'a tap on a row takes its fish in hand');
  }));

  test('a tiger barb is shown as what it does before it is dropped', () => with_planner({}, async planner => {
    await find_on_shelf(planner, 'tiger barb', 'puntigrus-tetrazona');
    await planner.drag('shelf.row/puntigrus-tetrazona', 'tank.front', { before_drop: () => planner.picture('planner-held-tiger') });
    const { assessment } = await planner.state();
    assert.ok(assessment.room.groups.some(group => group.species === 'puntigrus-tetrazona'));
  }));

  test('metric and US name the same plan', () => with_planner({}, async planner => {
    const start = await planner.state();
    await planner.click('top.units');
    const menu = Object.keys((await planner.state()).rects).filter(id => id.startsWith('top.units/'));
    await planner.click(menu.find(id => /us/i.test(id)) || menu.at(-1));
    const us = await planner.state();
    assert.deepEqual(us.plan, start.plan);
    assert.deepEqual(us.assessment, start.assessment);
    await planner.picture('planner-us');
  }));
});

describe('from nothing', () => {
  test('the riverbank: its tank, water and stock', () => with_planner({}, async planner => {
    const demo = (await planner.state()).plan;
    await planner.click('top.file');
    await planner.click('top.file/new');
    assert.equal((await planner.state()).plan.stock.length, 0);
    const fill = async (field, text) => {
      await planner.click(field);
      await planner.page.keyboard.press('Control+a');
      await planner.type(text);
      await planner.press('Enter');
    };
    await fill('top.name', demo.name);
    await planner.click('top.size');
    for (const [field, value] of [['length', 90], ['width', 45], ['height', 45], ['glass', 8], ['fill', 41.5]])
      if ((await planner.state()).rects[`tank_sheet.${field}`]) await fill(`tank_sheet.${field}`, String(value));
    await planner.picture('planner-own-measures');
    await planner.press('Escape');
    await planner.click('water.enter');
    for (const [field, value] of [['temperature', 14], ['ph', 7.6], ['gh', 13], ['kh', 8], ['nitrate', 10]]) await fill(`water_sheet.tap.${field}`, String(value));
    const inputs = { x: 150, y: 500 };
    await planner.bring('water_sheet.aim/1', inputs);
    await planner.click('water_sheet.aim/1');
    for (const [field, value] of [['temperature', 25], ['ph', 6.8], ['gh', 7], ['kh', 3.2]]) {
      await planner.bring(`water_sheet.aim.${field}`, inputs);
      await fill(`water_sheet.aim.${field}`, String(value));
    }
    await planner.bring('water_sheet.planting/1', inputs);
    await planner.click('water_sheet.planting/1');
    await planner.press('Escape');
    for (const [words, species, count] of [['harlequin', 'trigonostigma-heteromorpha', 10], ['sterba', 'hoplisoma-sterbai', 8], ['threadfin', 'iriatherina-werneri', 6], ['honey', 'trichogaster-chuna', 2]]) {
      await find_on_shelf(planner, words, species);
      await planner.drag(`shelf.row/${species}`, 'tank.front');
      const step = async way => planner.click(`stock.count/${species}/${way}`);
      for (let there = count_of((await planner.state()).plan, species); there !== count; there += there < count ? 1 : -1) await step(there < count ? 'more' : 'less');
    }
    const { plan, assessment } = await planner.state();
    assert.equal(plan.name, demo.name);
    assert.deepEqual(plan.tank, demo.tank);
    for (const key of ['temperature_c', 'ph', 'gh_dgh', 'kh_dkh', 'nitrate_mg_l']) assert.equal(plan.source[key], demo.source[key], key);
    assert.deepEqual(plan.water, demo.water);
    assert.deepEqual(plan.stock.map(group => [group.species, group.count]), demo.stock.map(group => [group.species, group.count]));
    assert.deepEqual(assessment.findings.filter(finding => ['harm', 'strain'].includes(finding.severity)), []);
    await planner.picture('planner-from-nothing');
  }));
});

describe('sharing', () => {
  test('a link opens the same plan in a friend\'s browser', () => with_planner({}, async planner => {
    await planner.click('stock.count/trichogaster-chuna/more');
    await planner.click('top.share');
    const link = await planner.clipboard();
    assert.match(link, /^http:\/\/127\.0\.0\.1:\d+\/#p=[A-Za-z0-9_-]+$/);
    const mine = await planner.state();
    const friend = await Planner.open(stage.browser, link, { width: 1024, height: 768 });
    try {
      const theirs = await friend.state();
      assert.deepEqual(theirs.plan, mine.plan);
      assert.deepEqual(theirs.assessment.findings, mine.assessment.findings);
      // The friend's change is the friend's own, and one step of Undo goes back to what was there before the link.
      await friend.click('stock.count/trichogaster-chuna/more').catch(() => {});
      assert.deepEqual((await planner.state()).plan, mine.plan);
    } finally {
      await friend.close();
    }
  }));

  test('a reload finds the plan again', () => with_planner({}, async planner => {
    await planner.click('stock.count/hoplisoma-sterbai/more');
    const before = await planner.state();
    await sleep(1500);
    await planner.page.reload();
    await planner.running();
    assert.deepEqual((await planner.state()).plan, before.plan);
  }));

  for (const [what, fragment] of [['damaged', '#p=AAAAthis-is-no-plan'], ['empty', '#p='], ['cut', null]]) {
    test(`a ${what} link gives one sentence and leaves the plan alone`, () => with_planner({}, async planner => {
      const start = await planner.state();
      let broken = fragment;
      if (!broken) {
        await planner.click('top.share');
        broken = '#' + (await planner.clipboard()).split('#')[1].slice(0, -10);
      }
      await planner.page.evaluate(hash => { location.hash = hash; }, broken);
      await planner.page.waitForFunction(() => JSON.parse(window.UTF8ToString(window.Module._state_json())).notice !== '');
      const state = await planner.state();
      assert.deepEqual(state.plan, start.plan);
      assert.match(state.notice, /\. Your own plan is as you left it\.$/);
      await planner.picture(`planner-link-${what}`);
      await planner.click('notice/back');
      assert.equal((await planner.state()).notice, '');
    }));
  }

  test('text in a shared plan stays text', () => with_planner({}, async planner => {
    const hostile = '<img src=x onerror=alert(1)>';
    await planner.click('top.name');
    await planner.page.keyboard.press('Control+a');
    await planner.type(hostile);
    await planner.press('Enter');
    assert.equal((await planner.state()).plan.name, hostile);
    assert.ok((await planner.plan_text()).includes(hostile));
    assert.equal(await planner.page.locator('#plan-text img').count(), 0);
  }));
});

describe('what it looks like', () => {
  for (const [width, height] of [[1440, 900], [1024, 768], [390, 844]])
    for (const colorScheme of ['light', 'dark'])
      test(`${width} x ${height}, ${colorScheme}`, () => with_planner({ width, height, colorScheme }, async planner => {
        await planner.idle(1500);
        await planner.picture(`planner-${width}-${colorScheme}`);
        assert.equal((await planner.state()).theme, colorScheme);
        for (const [id, [x, y, w, h]] of Object.entries((await planner.state()).rects))
          assert.ok(x >= -0.5 && y >= -0.5 && x + w <= width + 0.5 && y + h <= height + 0.5, `${id} reaches out of the window: ${[x, y, w, h]}`);
      }));
});
