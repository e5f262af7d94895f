import 'mocha/mocha.js';
import { Lines } from './lines.js';

// Must run before the files that call `describe`.
mocha.setup({
  ui: 'bdd',
  timeout: 180_000,
  reporter: Lines as unknown as Mocha.ReporterConstructor,
});
