import { createContext } from 'preact';
import { useContext } from 'preact/hooks';
import type { PanelWords } from './panel-words.js';

/** The panel's words in the reader's language, for every part of the page. */
export const WordsContext = createContext<PanelWords | undefined>(undefined);

export function useWords(): PanelWords {
  const words = useContext(WordsContext);
  if (words === undefined) throw new Error('the panel has no words');
  return words;
}

/** The words that the host wrote into the page; `undefined` where it wrote none. */
export function wordsOfPage(written: string | undefined): PanelWords | undefined {
  if (written === undefined) return undefined;
  return JSON.parse(written) as PanelWords;
}
