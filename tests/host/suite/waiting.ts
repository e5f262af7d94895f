import * as vscode from 'vscode';

/** Waits for a state, woken by an event; never for a time. Fails, saying what it saw last, when it never comes. */
export const until = async <State>(
  what: string,
  event: vscode.Event<unknown>,
  look: () => State | undefined | Promise<State | undefined>,
  withinMs = 20_000,
): Promise<State> =>
  new Promise((found, failed) => {
    let looking = false;
    let again = false;
    const stop = () => {
      clearTimeout(timer);
      listener.dispose();
    };
    const check = async () => {
      if (looking) {
        again = true;
        return;
      }
      looking = true;
      try {
        do {
          again = false;
          const state = await look();
          if (state !== undefined) {
            stop();
            return found(state);
          }
        } while (again);
      } catch (error) {
        stop();
        failed(error);
      } finally {
        looking = false;
      }
    };
    const listener = event(check);
    const timer = setTimeout(() => {
      stop();
      failed(new Error(`Waited for ${what}, and it did not come.`));
    }, withinMs);
    void check();
  });

/** The findings of a file, once they are as asked. */
export const findings = (
  uri: vscode.Uri,
  what: string,
  fits: (found: readonly vscode.Diagnostic[]) => boolean,
): Promise<readonly vscode.Diagnostic[]> =>
  until(what, vscode.languages.onDidChangeDiagnostics, () => {
    const found = vscode.languages.getDiagnostics(uri);
    return fits(found) ? found : undefined;
  }).catch((error: Error) => {
    const seen = vscode.languages.getDiagnostics(uri).map((d) => `${codeOf(d)}: ${d.message}`);
    throw new Error(`${error.message} Seen last: ${seen.join('; ') || 'nothing'}`);
  });

export const codeOf = ({ code }: vscode.Diagnostic): string | undefined =>
  code === undefined ? undefined : String(typeof code === 'object' ? code.value : code);
