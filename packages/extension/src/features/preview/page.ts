import type { PanelWords } from '@cribwright/preview';

/** Where the page of the panel finds its parts, as addresses the page may load. */
export interface PageParts {
  readonly script: string;
  readonly style: string;
  /** What the host allows as a source of its own files. */
  readonly source: string;
  /** Once per load; nothing without it runs. */
  readonly nonce: string;
  readonly title: string;
  readonly language: string;
  /** The panel's own words until the first drawing brings them. */
  readonly words: PanelWords;
}

/**
 * The page that the panel loads once. It may run our script and its parts and nothing else: no other script,
 * no address outside, no form.
 */
export const pageOf = ({
  script,
  style,
  source,
  nonce,
  title,
  language,
  words,
}: PageParts): string => `<!DOCTYPE html>
<html lang="${quoted(language)}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${quoted(
  [
    "default-src 'none'",
    `img-src ${source} data: blob:`,
    `style-src ${source} 'nonce-${nonce}'`,
    `font-src ${source}`,
    `script-src ${source} 'nonce-${nonce}'`,
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; '),
)}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<link rel="stylesheet" nonce="${quoted(nonce)}" href="${quoted(style)}">
<title>${quoted(title)}</title>
</head>
<body>
<div id="panel" data-words="${quoted(JSON.stringify(words))}"></div>
<script type="module" nonce="${quoted(nonce)}" src="${quoted(script)}"></script>
</body>
</html>
`;

const quoted = (text: string): string =>
  text.replace(/[&<>"]/g, (c) => ({ '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' })[c] ?? c);
