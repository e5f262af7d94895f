import * as vscode from 'vscode';

/** Asks the process outside to act on the window with a real mouse and real keys, or to look at it. */
export const hands = async <Done>(
  name: string,
  given: Readonly<Record<string, unknown>> = {},
): Promise<Done> => {
  const address = vscode.workspace.getConfiguration('cribwrightTest').get<string>('hands');
  if (!address) throw new Error('The workspace does not say where the hands are.');
  const response = await fetch(address, {
    method: 'POST',
    body: JSON.stringify({ name, given }),
  });
  const { done, failed } = (await response.json()) as {
    done: Done;
    failed?: string;
  };
  if (failed !== undefined) throw new Error(failed);
  return done;
};

/** What a person sees in the panel. */
export interface Look {
  readonly text: string;
  readonly drawing: string | undefined;
  readonly elements: readonly string[];
  readonly lit: readonly string[];
  readonly notice: string | undefined;
  readonly caution: string | undefined;
}
