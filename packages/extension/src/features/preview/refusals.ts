import * as vscode from 'vscode';

/** Why a key that adds or takes a course does nothing. */
export const refusals = () => ({
  'not a crib': vscode.l10n.t('Courses are added to a crib and taken from it. Choose a crib first.'),
  'last course': vscode.l10n.t('This is its last course. Take the crib out of the text instead.'),
});
