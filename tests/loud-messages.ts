import { onFault } from '@cribwright/messages';

/** A message without words, or with a hole that nothing fills, fails the test in which it is shown. */
onFault((what) => {
  throw new Error(what);
});
