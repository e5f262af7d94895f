import type { Pending } from '@cribwright/workspace/internal';
import type { ClientCapabilities, Connection, ServerCapabilities } from 'vscode-languageserver';
import type { FeatureContext } from './feature-context.js';

/** A desk with a client across it. */
export interface Session extends FeatureContext {
  readonly connection: Connection;
  readonly client: ClientCapabilities;
  /** Names this run of the server, so that what an earlier one said can be told from what it says. */
  readonly life: string;
  /** Files of which the client shows a drawing: it asked for their analysis since they were opened. */
  readonly drawn: Set<string>;
  /** Files of which a feature was answered before all was worked out, and what was missing at the most. */
  readonly served: Map<string, Pending>;
}

/** One feature of the protocol: what it offers, and its answers. A file of its own, named after the feature. */
export interface Feature {
  /** Part of the reply to `initialize`. Absent for requests of our own. */
  readonly offers?: (client: ClientCapabilities) => ServerCapabilities;
  readonly serve: (session: Session) => void;
}
