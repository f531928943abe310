/** A box typed at goods-in, field by field as its bike is described. */

import { expect, type Page } from '@playwright/test';
import type { Bike } from '../../src/engine/bike';
import { words } from '../../src/words';

export type TypedBike = Bike;

export async function typeBox(page: Page, bike: TypedBike): Promise<void> {
  const text = words.goodsIn;
  await page.getByRole('link', { name: words.app.goodsIn }).tap();
  const type = (label: string, value: string | number | undefined) =>
    value === undefined
      ? Promise.resolve()
      : page.getByLabel(label, { exact: true }).fill(String(value));
  const pick = (label: string, value: string) =>
    page.getByRole('combobox', { name: label, exact: true }).selectOption(value);
  await pick(text.kind, bike.kind);
  await type(text.make, bike.make);
  await type(text.model, bike.model);
  await type(text.frameNumber, bike.frameNumber);
  await type(text.colour, bike.colour);
  await type(text.size, bike.size);
  for (const wheel of ['front', 'rear'] as const) {
    await pick(`${text.wheel[wheel]}: ${text.axle}`, bike[wheel].axle);
    await pick(`${text.wheel[wheel]}: ${text.brake}`, bike[wheel].brake);
    await type(`${text.wheel[wheel]}: ${text.tyre}`, bike[wheel].tyre);
  }
  await type(text.pressure, bike.front.tyrePressure);
  await pick(text.fork, bike.fork.kind);
  await pick(text.steering, bike.steering.stem);
  await pick(text.bar, bike.steering.bar);
  await pick(text.gears, bike.gears.kind);
  await type(text.speeds, bike.gears.speeds);
  await pick(text.clamp, bike.seat.clamp);
  await type(text.post, bike.seat.postDiameter);
  await type(text.loadLimit, bike.loadLimit);
  await pick(text.frameMaterial, bike.frame.material);
  await pick(text.barMaterial, bike.steering.barMaterial);
  await pick(text.postMaterial, bike.seat.postMaterial);
  await pick(text.steererMaterial, bike.fork.steerer);
  await page.getByRole('button', { name: text.take }).tap();
  await expect(page.getByText(text.taken(bike.frameNumber))).toBeVisible();
}
