import { wordsIn } from '@cribwright/messages';
import { expect, it } from 'vitest';
import { pageOf } from './page.js';
import { panelWords } from './panel-words.js';

const page = pageOf({
  script: 'https://host/panel.js?a=1&b="><script>',
  style: 'https://host/panel.css',
  source: 'https://host',
  nonce: 'n0nce',
  title: '"Car" <under> a rail',
  language: 'en',
  words: panelWords(wordsIn('en', 'us')),
});

it('allows nothing but its own script and style', () => {
  const policy = /Content-Security-Policy" content="([^"]+)"/.exec(page)?.[1] ?? '';
  expect(policy).toContain("default-src 'none'");
  expect(policy).toContain("script-src https://host 'nonce-n0nce'");
  expect(policy).not.toMatch(/unsafe-(inline|eval)|\*/);
});

it('lets no name or address write into the page', () => {
  expect(page).toContain('<title>&quot;Car&quot; &lt;under&gt; a rail</title>');
  expect(page).toContain('src="https://host/panel.js?a=1&amp;b=&quot;&gt;&lt;script&gt;"');
  expect(page.match(/<script/g)).toHaveLength(1);
});
