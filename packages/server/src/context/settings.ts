/** What a user may set, under `cribwright.*` in the editor's settings. */
export interface Settings {
  /** Height, load and use at the end of a support's line. Off unless asked for. */
  readonly inlayHints: boolean;
  /** Figures and links above each plan and support. */
  readonly codeLens: boolean;
  /** Units of figures: as the plan says, or always one kind. */
  readonly units: 'plan' | 'us' | 'si';
  readonly language: 'auto' | 'en' | 'es';
}

export const defaultSettings: Settings = {
  inlayHints: false,
  codeLens: true,
  units: 'plan',
  language: 'auto',
};

type Loose = Readonly<Record<string, unknown>>;
const isLoose = (value: unknown): value is Loose =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Reads the section `cribwright`. A value that makes no sense is passed over; the default stands. */
export function readSettings(section: unknown): Settings {
  const from = isLoose(section) ? section : {};
  return {
    inlayHints: enabled(from, 'inlayHints', defaultSettings.inlayHints),
    codeLens: enabled(from, 'codeLens', defaultSettings.codeLens),
    units: oneOf(from.units, ['plan', 'us', 'si'], defaultSettings.units),
    language: oneOf(from.language, ['auto', 'en', 'es'], defaultSettings.language),
  };
}

/**
 * Checks that take longer than this, ms, are shown in two goes: what hangs on no load, then all. A client may set it
 * with `initializationOptions.longestCheck`: 0 always shows what there is first.
 */
export const longestCheck = (options: unknown): number => {
  const value = isLoose(options) ? options.longestCheck : undefined;
  return typeof value === 'number' && value >= 0 ? value : 40;
};

/** `inlayHints: { enabled: true }` in a tree of settings, `"inlayHints.enabled": true` in a flat one. */
function enabled(from: Loose, name: string, otherwise: boolean): boolean {
  const tree = from[name];
  const value = isLoose(tree) ? tree.enabled : from[`${name}.enabled`];
  return typeof value === 'boolean' ? value : otherwise;
}

function oneOf<const T extends string>(value: unknown, of: readonly T[], otherwise: T): T {
  return of.find((one) => one === value) ?? otherwise;
}

/** The language of messages: as set, or the editor's own where it is one that we speak. */
export const localeOf = (settings: Settings, client: string | undefined): 'en' | 'es' =>
  settings.language !== 'auto' ? settings.language : client?.toLowerCase().startsWith('es') ? 'es' : 'en';
