import { assert } from 'chai';
import * as vscode from 'vscode';

describe('typing', () => {
  it('activates', async () => {
    const document = await vscode.workspace.openTextDocument({
      language: 'cribwright',
      content: '',
    });
    await vscode.window.showTextDocument(document);
    const extension = vscode.extensions.getExtension('cribwright.cribwright');
    assert.isDefined(extension);
    await extension?.activate();
  });
});
