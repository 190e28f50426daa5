// SPDX-License-Identifier: MIT
// Hills and valleys drawn by real mouse, keyboard and finger.
import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { different_pixels, sleep, sound_planners } from './harness.mjs';

const { with_planner } = sound_planners();

const line_of = async planner => (await planner.state()).plan.substrate.line_cm;

/** A place on the sand of the front view, a share of the tank's length from the left, clear of pieces. */
async function sand(planner, across) {
  const { x, y, width, height } = await planner.rect('tank.front');
  return { x: x + width * across, y: y + height - 16 };
}

/** Chooses the substrate by pressing on it. */
async function choose_sand(planner) {
  const at = await sand(planner, 0.9);
  await planner.page.mouse.click(at.x, at.y);
  await planner.idle();
  assert.ok((await planner.state()).rects['line.add'], 'the bar of the terrain line stands below the tank');
}

describe('a keeper who scapes', () => {
  test('pulls a hill out of the sand, shapes it, and takes each step back by one undo', () => with_planner({}, async planner => {
    const start = await planner.state();
    const slope = await planner.picture('terrain-slope');
    await choose_sand(planner);
    const line = await planner.rect('tank.line'), from = { x: line.x + line.width * 0.8, y: line.y + line.height / 2 };
    await planner.drag(from, { x: from.x, y: from.y - 70 });
    const hill = await planner.state();
    const points = hill.plan.substrate.line_cm;
    assert.equal(points.length, 3, 'a hill has two feet');
    assert.ok(points[1][1] > 5, 'it rises as far as the hand went');
    assert.equal(points[0][1], 0);
    assert.equal(points[2][1], 0);
    assert.ok(Math.abs(points[1][0] - 0.8 * 88.4) < 2, 'where the hand took hold');
    assert.ok(hill.assessment.volume.substrate_l > start.assessment.volume.substrate_l + 1);
    assert.ok(hill.assessment.volume.net_l < start.assessment.volume.net_l - 0.5);
    assert.ok(different_pixels(slope, await planner.picture('terrain-hill')) > 4000, 'the hill is drawn');

    const foot = await planner.point('tank.line/0');
    await planner.drag(foot, { x: foot.x - 60, y: foot.y + 20 });
    const wider = await line_of(planner);
    assert.ok(wider[0][0] < points[0][0] - 4 && wider[0][1] < -1, 'a point is dragged sideways and down');
    await planner.press('ArrowUp');
    assert.deepEqual((await line_of(planner))[0], [wider[0][0], Math.round((wider[0][1] + 1) * 10) / 10]);
    await planner.press('m');
    assert.ok(Math.abs((await line_of(planner))[2][0] - (88.4 - wider[0][0])) < 0.01, 'M mirrors it');
    await planner.press('Delete');
    assert.equal((await line_of(planner)).length, 2);

    for (let i = 0; i < 5; i++) await planner.press('Control+z');
    const undone = await planner.state();
    assert.deepEqual(undone.plan, start.plan, 'a drag is one step, and so is each of the others');
    assert.deepEqual(undone.assessment, start.assessment);
  }));

  test('adds a point by a double click, drags one out, and levels it all', () => with_planner({}, async planner => {
    await choose_sand(planner);
    await planner.click('line.add');
    assert.equal((await line_of(planner)).length, 3);
    const line = await planner.rect('tank.line');
    await planner.page.mouse.dblclick(line.x + line.width * 0.1, line.y + line.height / 2);
    await planner.idle();
    assert.equal((await line_of(planner)).length, 4);
    assert.ok(Math.abs((await line_of(planner))[0][0] - 8.84) < 1.5);
    const top = await planner.point('tank.line/2');
    await planner.drag(top, { x: top.x, y: top.y - 60 });
    assert.ok((await line_of(planner))[2][1] > 4);
    const { y, height } = await planner.rect('tank.front');
    const out = await planner.point('tank.line/0');
    await planner.drag(out, { x: out.x, y: y + height + 70 });
    assert.equal((await line_of(planner)).length, 3, 'dragged out of the tank it is gone');
    await planner.click('line.level');
    assert.equal(await line_of(planner), undefined);
    await planner.click('line.done');
    assert.equal((await planner.state()).rects['line.add'], undefined);
  }));

  test('reaches it from the sheet of the tank, and a shorter tank keeps the line', () => with_planner({}, async planner => {
    await choose_sand(planner);
    const line = await planner.rect('tank.line'), from = { x: line.x + line.width * 0.8, y: line.y + line.height / 2 };
    await planner.drag(from, { x: from.x, y: from.y - 70 });
    const before_it = await line_of(planner);
    await planner.press('Escape', 'Escape');
    await planner.click('top.size');
    await planner.click('tank_sheet.length');
    await planner.press('Control+a');
    await planner.type('60');
    await planner.press('Enter');
    const after_it = (await planner.state()).plan;
    assert.ok(after_it.tank.length_cm < 60);
    assert.equal(after_it.substrate.line_cm.length, 3);
    assert.ok(Math.abs(after_it.substrate.line_cm[1][0] / after_it.tank.length_cm - before_it[1][0] / 88.4) < 0.01);
    await planner.bring('tank_sheet.line', await planner.point('tank_sheet.glass'));
    await planner.click('tank_sheet.line');
    assert.ok((await planner.state()).rects['tank.line/1'], 'the sheet makes way for its handles');
  }));
});

describe('a keeper with a phone', () => {
  test('chooses the sand by a tap and pulls a hill by a finger', () => with_planner({ width: 390, height: 844, ratio: 2, hasTouch: true, isMobile: true }, async planner => {
    const at = await sand(planner, 0.9);
    await planner.page.touchscreen.tap(at.x, at.y + 8);
    await planner.idle();
    const line = await planner.rect('tank.line'), x = line.x + line.width * 0.8, y = line.y + line.height / 2;
    const session = await planner.context.newCDPSession(planner.page);
    const touch = (type, points) => session.send('Input.dispatchTouchEvent', { type, touchPoints: points });
    await touch('touchStart', [{ x, y }]);
    for (let i = 1; i <= 8; i++) {
      await touch('touchMove', [{ x, y: y - 5 * i }]);
      await sleep(16);
    }
    await touch('touchEnd', []);
    await planner.idle();
    const points = await line_of(planner);
    assert.equal(points.length, 3);
    assert.ok(points[1][1] > 5);
    await planner.picture('terrain-phone');
  }));
});
