/** What is done about a message that has no words. Tests throw; at run time the id is shown in its place. */
let report: (what: string) => void = () => {};

/** Says what to do about a fault in the catalogs. */
export function onFault(handler: (what: string) => void): void {
  report = handler;
}

export const fault = (what: string): void => report(what);
