/**
 * Leaves out of the protocol's libraries what keeps notebooks in step: a server that offers none never runs it.
 *
 * @type {import('esbuild').Plugin}
 */
export const noNotebooks = {
  name: 'no-notebooks',
  setup(build) {
    build.onLoad({ filter: /[\\/]vscode-languageserver[\\/]lib[\\/]common[\\/]notebook\.js$/ }, () => ({
      contents: 'exports.NotebookSyncFeature = (Base) => Base;',
    }));
    build.onLoad(
      { filter: /[\\/]vscode-languageserver-protocol[\\/]lib[\\/]common[\\/]protocol\.notebook\.js$/ },
      () => ({ contents: 'module.exports = {};' }),
    );
  },
};
