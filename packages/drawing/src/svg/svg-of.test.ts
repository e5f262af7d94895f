import { describe, expect, it } from 'vitest';
import { at, circle, group, line, polygon, text } from '../scene/draw.js';
import type { Scene } from '../scene/scene.js';
import { palettes } from './palette.js';
import { svgOf } from './svg-of.js';

const scene: Scene = {
  choice: { view: 'height limits', subject: undefined, stage: undefined, lost: undefined },
  title: 'Crib <A> & "B"',
  words: 'In words.',
  width: 100,
  height: 50,
  frame: undefined,
  caution: 'Believe what you see.',
  items: [
    group(
      'crib/A',
      [
        polygon('p', 'timber', [at(1, 1), at(2, 1), at(2, 2)], 'hatch'),
        circle('c', 'load', at(3, 3), 1, 'none'),
        line('l', 'dimension', at(0, 0), at(10, -0), { head: 'both ticks', dash: 'dashed' }),
        text('t', at(5, 5), '<script>alert(1)</script>', 3, { turn: -90 }),
      ],
      {
        ref: { element: 'crib/A"><x', property: 'courses' },
        name: 'crib A, 38.5 in & more',
        worst: 'danger',
      },
    ),
  ],
};

describe('a drawing as SVG', () => {
  const svg = svgOf(scene);
  it('escapes what people wrote', () => {
    expect(svg).not.toContain('<script>');
    expect(svg).toContain('&lt;script>');
    expect(svg).not.toContain('"><x');
    expect(svg).toContain('Crib &lt;A> &amp; &quot;B&quot;');
  });
  it('carries what each shape stands for, and its name', () => {
    expect(svg).toContain('data-property="courses"');
    expect(svg).toContain('<title>crib A, 38.5 in &amp; more</title>');
    expect(svg).toContain('data-view="height limits"');
  });
  it('has the hatch that it uses, and no other', () => {
    expect(svg.match(/<pattern/g)).toHaveLength(1);
    expect(svg).toContain('fill="url(#height-limits-hatch-timber)"');
  });
  it('has no number that is not one, and no -0', () => {
    expect(svg).not.toMatch(/NaN|Infinity|"-0"|undefined/);
  });
  it('gives the same bytes each time, and other colors only in its style', () => {
    expect(svgOf(scene)).toBe(svg);
    const bare = (text: string) => text.replace(/<style>.*<\/style>/s, '');
    for (const { name } of palettes) expect(bare(svgOf(scene, name))).toBe(bare(svg));
    expect(new Set(palettes.map((p) => svgOf(scene, p.name))).size).toBe(palettes.length);
  });
});
