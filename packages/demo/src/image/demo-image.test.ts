import { expect, test } from 'vitest';
import { demoPlan } from '../plan/demo-plan.ts';
import { demoImage } from './demo-image.ts';

const image = demoImage();

/** Relative luminance. Source: WCAG 2.2, definition of relative luminance (sRGB). */
function luminance(red: number, green: number, blue: number): number {
  const [r = 0, g = 0, b = 0] = [red, green, blue].map((part) => {
    const share = part / 255;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  });
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
}

test('the picture is painted the same each time', () => {
  expect(Buffer.from(demoImage().rgba).equals(Buffer.from(image.rgba))).toBe(true);
});

test('the picture covers the whole site', () => {
  const [a, , left, , e, top] = image.placement;
  const [outline = []] = demoPlan().site.boundary?.outlines ?? [];
  for (const { x, y } of outline) {
    expect((x - left) / a).toBeGreaterThan(0);
    expect((x - left) / a).toBeLessThan(image.width);
    expect((y - top) / e).toBeGreaterThan(0);
    expect((y - top) / e).toBeLessThan(image.height);
  }
});

// WCAG 2.2, 1.4.11: lines that must be seen need 3:1 against what is beside them. The ink is #24313A.
test('ink lines read on nearly all of it', () => {
  const ink = luminance(0x24, 0x31, 0x3a);
  let legible = 0;
  let pixels = 0;
  for (let start = 0; start < image.rgba.length; start += 4 * 101) {
    const [red = 0, green = 0, blue = 0] = image.rgba.subarray(start, start + 3);
    pixels += 1;
    if ((luminance(red, green, blue) + 0.05) / (ink + 0.05) >= 3) legible += 1;
  }
  expect(legible / pixels).toBeGreaterThan(0.99);
});

test('it is opaque', () => {
  for (let start = 3; start < image.rgba.length; start += 4 * 997) expect(image.rgba[start]).toBe(255);
});
