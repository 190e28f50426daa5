// SPDX-License-Identifier: MIT
// The Water page by real mouse, keyboard and finger: blend, use, take back.
import assert from 'node:assert/strict';
import { after, before, describe, test } from 'node:test';
import { Planner, different_pixels, launch, serve } from './harness.mjs';

let browser, server;
before(async () => {
  browser = await launch();
  server = await serve();
});
after(async () => {
  await browser.close();
  await server.close();
});

async function with_planner(options, body) {
  const planner = await Planner.open(browser, server.url, { width: 1440, height: 900, ...options });
  try {
    await body(planner);
    assert.deepEqual(planner.complaints, [], 'the page complained');
  } finally {
    await planner.close();
  }
}

async function open_water(planner) {
  await planner.click('top.tab/water');
  await planner.page.waitForFunction(() => document.body.dataset.rest === 'here');
  await planner.idle();
}

describe('the Water page', () => {
  test('the slider of RO water is dragged, the water is used, and one Undo brings the plan back', () => with_planner({}, async planner => {
    const start = (await planner.state()).plan;
    await open_water(planner);
    const before = await planner.picture('water');
    const slider = await planner.rect('water_sheet.ro_slider');
    await planner.drag('water_sheet.ro_slider', { x: slider.x + slider.width * 0.25, y: slider.y + slider.height / 2 }, {
      before_drop: async () => assert.ok(different_pixels(before, await planner.picture()) > 3000, 'bars, chart and bucket follow the hand'),
    });
    assert.ok((await planner.state()).rects['water_sheet.ro_usual'], 'there is a way back to the recipe');
    assert.deepEqual((await planner.state()).plan, start, 'a blend decides nothing');
    await planner.click('water_sheet.use');
    const used = (await planner.state()).plan;
    assert.ok(used.water.kh_dkh > start.water.kh_dkh, 'more tap water, more carbonate');
    await planner.click('top.undo');
    assert.deepEqual((await planner.state()).plan, start);
  }));

  test('mix and aim are dragged on the chart', () => with_planner({}, async planner => {
    await open_water(planner);
    const start = (await planner.state()).plan, mix = await planner.point('water_sheet.mark/mix'), tap = await planner.point('water_sheet.mark/tap');
    await planner.drag('water_sheet.mark/mix', { x: (mix.x + tap.x) / 2, y: (mix.y + tap.y) / 2 });
    const moved = await planner.point('water_sheet.mark/mix');
    assert.ok(moved.x > mix.x + 40 && moved.y < mix.y - 30, 'it lies along the line');
    const aim = await planner.point('water_sheet.mark/aim');
    await planner.drag('water_sheet.mark/aim', { x: aim.x + 70, y: aim.y - 30 });
    const aimed = await planner.point('water_sheet.mark/aim');
    assert.ok(Math.abs(aimed.x - aim.x - 70) < 6 && Math.abs(aimed.y - aim.y + 30) < 6, 'it stays where it was put');
    assert.deepEqual((await planner.state()).plan, start);
    await planner.drag('water_sheet.mark/tap', { x: tap.x + 40, y: tap.y - 30 });
    assert.ok((await planner.state()).plan.source.gh_dgh > start.source.gh_dgh, 'the tap is the plan\'s');
  }));

  test('by keyboard: to the page, to its way out, and back', () => with_planner({}, async planner => {
    await planner.click('top.tab/tank');
    await planner.press('Tab', 'Tab', 'Enter');  // the first shows where the keyboard is
    await planner.page.waitForFunction(() => document.body.dataset.rest === 'here');
    await planner.idle();
    assert.ok((await planner.state()).rects['water_sheet.chart'], 'the tab after the tank\'s is the water\'s');
    await planner.press('Enter');
    assert.ok((await planner.state()).rects['tank.front'], 'the keyboard stood on the way out');
    await planner.press('Tab', 'Enter', 'Escape');
    assert.ok((await planner.state()).rects['tank.front'], 'and went back to the tabs');
  }));

  test('at rest nothing is drawn', () => with_planner({}, async planner => {
    await open_water(planner);
    await planner.idle(600);
    const frames = await planner.frames();
    await planner.page.waitForTimeout(2000);
    assert.equal(await planner.frames(), frames);
  }));

  test('on a phone it is one column, and a finger draws the slider without scrolling it', () => with_planner({ width: 390, height: 844, hasTouch: true }, async planner => {
    await planner.click('top.file');
    await planner.click('top.tab/water');
    await planner.page.waitForFunction(() => document.body.dataset.rest === 'here');
    await planner.idle();
    await planner.picture('water-phone');
    const start = await planner.rect('water_sheet.ro_slider'), y = start.y + start.height / 2;
    const cdp = await planner.page.context().newCDPSession(planner.page);
    const touch = (type, ...points) => cdp.send('Input.dispatchTouchEvent', { type, touchPoints: points });
    await touch('touchStart', { x: start.x + start.width * 0.6, y });
    for (let i = 1; i <= 8; i++) {
      await touch('touchMove', { x: start.x + start.width * (0.6 - 0.05 * i), y: y + i });
      await planner.idle(20);
    }
    await touch('touchEnd');
    await planner.idle();
    const { rects } = await planner.state();
    assert.equal(rects['water_sheet.ro_slider'][1], start.y, 'the column stood still');
    assert.ok(rects['water_sheet.ro_usual'], 'the share was set');
  }));
});
