import * as vscode from 'vscode';

/**
 * A finding's link points at `cribwright:/rules/crib-height.md`. In this editor it opens the page laid out for
 * reading, and needs no network.
 */
export const withRulePage = (diagnostic: vscode.Diagnostic): vscode.Diagnostic => {
  const { code } = diagnostic;
  if (typeof code !== 'object' || code.target.scheme !== 'cribwright') return diagnostic;
  const rule = /^\/rules\/([a-z0-9-]+)\.md$/.exec(code.target.path)?.[1];
  if (rule === undefined) return diagnostic;
  diagnostic.code = {
    value: code.value,
    target: vscode.Uri.parse(
      `command:cribwright.showRule?${encodeURIComponent(JSON.stringify([rule]))}`,
      true,
    ),
  };
  return diagnostic;
};
