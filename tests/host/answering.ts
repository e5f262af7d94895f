/** Waits until a server answers at an address. False where it did not within a minute, or `gone` says that it has ended. */
export async function answering(address: string, gone = (): boolean => false): Promise<boolean> {
  const deadline = Date.now() + 60_000;
  while (Date.now() < deadline && !gone()) {
    const answered = await fetch(address).then(
      (r) => r.status < 500,
      () => false,
    );
    if (answered) return true;
    await new Promise((again) => setTimeout(again, 200));
  }
  return false;
}
