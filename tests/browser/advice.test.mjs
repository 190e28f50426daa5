// SPDX-License-Identifier: MIT
// Ways to put a plan right, what could go in, the years of a stock and the least tank, by real events.
import assert from 'node:assert/strict';
import { describe, test } from 'node:test';
import { sleep, sound_planners } from './harness.mjs';

const { with_planner } = sound_planners();
const rects = async planner => (await planner.state()).rects;
const grave = state => state.assessment.findings.filter(one => one.severity === 'harm' || one.severity === 'strain');

/** Moves until the second file is there, and waits until `id` is drawn. */
async function drawn(planner, id, seconds = 20) {
  for (let turn = 0; turn < seconds * 10; turn++) {
    if ((await rects(planner))[id]) return;
    await planner.page.mouse.move(640 + turn % 7, 300);
    await sleep(100);
  }
  throw new Error(`"${id}" was not drawn.`);
}

/** The lid off, under a kind that jumps: a plan with something to put right. */
async function open_top(planner) {
  await planner.click('shelf.search');
  await planner.type('marbled hatchetfish');
  await planner.press('Enter');
  await planner.idle();
  await planner.page.mouse.dblclick(...Object.values(await planner.point('shelf.row/carnegiella-strigata')));
  await planner.idle();
  await planner.click('top.size');
  await planner.click('tank_sheet.lid/1');
  await planner.press('Escape');
}

describe('putting a plan right', () => {
  test('shows ways, previews one under the pointer, does it by one press and takes it back by one', () => with_planner({ width: 1440, height: 900 }, async planner => {
    await open_top(planner);
    const before = await planner.state();
    assert.ok(grave(before).length > 0);
    await drawn(planner, 'mend');
    await planner.click('mend');
    await drawn(planner, 'mend/0/do');
    await planner.idle(400, 30000);
    await planner.picture('advice-mend');
    await planner.hover('mend/0/do');
    assert.ok((await rects(planner))['assessment.previewing']);
    assert.deepEqual((await planner.state()).plan, before.plan);
    await planner.click('mend/0/do');
    assert.deepEqual(grave(await planner.state()), []);
    assert.equal((await rects(planner)).mend, undefined);
    await planner.press('Control+z');
    assert.deepEqual((await planner.state()).plan, before.plan);
  }));
});

describe('what could go in', () => {
  test('lists fit, a kind can be ruled out, and one press puts a list in', () => with_planner({ width: 1440, height: 900 }, async planner => {
    await drawn(planner, 'stock.fill');
    await planner.click('stock.fill');
    await drawn(planner, 'fill.list/0/take');
    await planner.idle(400, 60000);
    await planner.picture('advice-fill');
    const never = await planner.first('fill.list/0/never/');
    const species = never.slice('fill.list/0/never/'.length);
    await planner.click(never);
    assert.deepEqual((await planner.state()).plan.wishes.never, [species]);
    await planner.idle(400, 60000);
    assert.equal((await rects(planner))[`fill.list/0/never/${species}`], undefined);
    const { plan } = await planner.state();
    await planner.click('fill.list/0/take');
    const after = await planner.state();
    assert.ok(after.plan.stock.length > plan.stock.length);
    assert.deepEqual(grave(after), []);
    await planner.press('Control+z');
    assert.equal((await planner.state()).plan.stock.length, plan.stock.length);
  }));
});

describe('the years', () => {
  test('the tank is shown and judged at an age, and the plan stays as it is', () => with_planner({ width: 1440, height: 900 }, async planner => {
    await drawn(planner, 'years/3');
    const before = await planner.state();
    await planner.click('years/3');
    await planner.picture('advice-old');
    assert.ok((await rects(planner))['assessment.previewing']);
    assert.deepEqual((await planner.state()).plan, before.plan);
    await planner.click('years/0');
    await planner.picture('advice-bought');
    await planner.click('years/2');
    assert.equal((await rects(planner))['assessment.previewing'], undefined);
  }));
});

describe('the least tank', () => {
  test('is worked out on the tank’s sheet and can be taken', () => with_planner({ width: 1440, height: 900 }, async planner => {
    await drawn(planner, 'stock.fill');
    await planner.click('top.size');
    await planner.bring('tank_sheet.least', await planner.point('tank_sheet.fill'));
    await planner.click('tank_sheet.least');
    await planner.picture('advice-tank');
    await planner.bring('tank_sheet.least/0', await planner.point('tank_sheet.back_depth'));
    const { plan } = await planner.state();
    await planner.click('tank_sheet.least/0');
    const after = (await planner.state()).plan;
    assert.ok(after.tank.length_cm < plan.tank.length_cm);
  }));
});

describe('who meets whom', () => {
  test('a nipper beside long fins: an arc, the words of it, and both animals to scale', () => with_planner({ width: 1440, height: 900 }, async planner => {
    for (const [words, species] of [['tiger barb', 'puntigrus-tetrazona'], ['angelfish', 'pterophyllum-scalare']]) {
      await planner.click('shelf.search');
      await planner.press('Control+a');
      await planner.type(words);
      await planner.press('Enter');
      await planner.idle();
      await planner.page.mouse.dblclick(...Object.values(await planner.point(`shelf.row/${species}`)));
      await planner.idle();
    }
    await planner.page.waitForFunction(() => document.body.dataset.rest === 'here');
    await planner.idle();
    const column = await planner.point('water');
    await planner.bring('meetings', column);
    await planner.click('meetings');
    await planner.bring('meetings/0', column);
    await planner.bring('meetings/0/arc', column);
    await planner.hover('meetings/0/arc');
    await planner.picture('advice-meetings');
    const why = Object.keys(await rects(planner)).find(id => id.startsWith('finding/predation/') && id.endsWith('/hoplisoma-sterbai/why'));
    assert.ok(why, 'the angelfish may choke on a corydoras');
    for (let turn = 0; turn < 30 && !((await rects(planner))[why]?.[3] > 0); turn++) {
      await planner.page.mouse.move(column.x, 500);
      await planner.page.mouse.wheel(0, -120);
      await planner.idle(60);
    }
    await planner.click(why);
    await planner.bring('to_scale/pterophyllum-scalare/hoplisoma-sterbai', { x: column.x, y: 500 });
    await planner.picture('advice-to-scale');
  }));
});

describe('losses', () => {
  test('four of a shoal are lost: the group asks what becomes of it, and each answer is one step', () => with_planner({ width: 1440, height: 900 }, async planner => {
    const species = 'trigonostigma-heteromorpha';
    await drawn(planner, 'stock.fill');
    await planner.click(`stock.menu/${species}`);
    for (let i = 0; i < 4; i++) await planner.click('stock.lost/more');
    await planner.press('Escape');
    const six = (await planner.state()).plan;
    assert.equal(six.stock[0].count, 6);
    assert.equal(six.log[0].lost[0].count, 4);
    assert.match(six.log[0].date, /^\d{4}-\d\d-\d\d$/);
    await planner.picture('advice-losses');
    await planner.click(`stock.loss/${species}/top_up`);
    const topped = (await planner.state()).plan;
    assert.equal(topped.stock[0].count, 10);
    assert.equal(topped.stock[0].have, 2, 'six swam, two of them are left');
    await planner.press('Control+z');
    assert.deepEqual((await planner.state()).plan, six);
    await planner.click(`stock.loss/${species}/run_out`);
    assert.equal((await rects(planner))[`stock.loss/${species}`], undefined);
    assert.equal((await planner.state()).plan.stock[0].count, 6);
  }));
});
