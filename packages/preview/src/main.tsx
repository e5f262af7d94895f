/** @jsxRuntime automatic @jsxImportSource preact */
import { render } from 'preact';
import { editorHost } from './host.js';
import { Panel } from './panel.js';
import './panel.css';
import { adoptThemes } from './themes.js';
import { wordsOfPage } from './words-context.js';

const place = document.getElementById('panel');
if (place !== null) {
  adoptThemes();
  render(<Panel host={editorHost()} words={wordsOfPage(place.dataset.words)} />, place);
}
