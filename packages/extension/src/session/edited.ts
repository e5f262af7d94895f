import * as vscode from 'vscode';

/**
 * Whether a person edits such texts. The older version in a comparison and what ships with the tool are shown alone:
 * their findings are nobody's to mend, and would be counted beside those of the plan.
 */
export const isEdited = ({ scheme }: Pick<vscode.Uri, 'scheme'>): boolean =>
  vscode.workspace.fs.isWritableFileSystem(scheme) !== false;
