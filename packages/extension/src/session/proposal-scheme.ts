/** The scheme of texts that are proposed: they can be read and compared, and are no plans of their own. */
export const proposalScheme = 'cribwright-proposal';
