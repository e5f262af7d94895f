/**
 * A request to the client that it may refuse: not every client can do everything. A refusal changes nothing here,
 * and must not end the server.
 */
export function ignoreRejection(request: Promise<unknown>): void {
  request.catch(() => undefined);
}
