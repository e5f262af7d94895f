import { list, message, name, term } from '@cribwright/messages';
import type { ElementId, Plan, Step } from '@cribwright/model';
import { exactly, type Interval, measured } from '@cribwright/model';
import { count, duration } from '@cribwright/model/internal';
import type { TimelineResult } from '../analysis/analysis.js';
import { type OrderGraph, orderGraph } from './order-graph.js';
import { stepWords } from './step-words.js';

interface Span {
  readonly start: Interval;
  readonly end: Interval;
}

/**
 * When each step starts and ends, if every step starts as soon as those it waits for are done. Times are ranges;
 * a step whose time is not stated counts as none, and the total says so.
 */
export function timelineOf(plan: Plan): TimelineResult | undefined {
  if (plan.steps.length === 0) return undefined;
  const graph = orderGraph(plan);
  const spans = spansOf(graph);
  const critical = criticalSteps(graph, spans);
  const ends = [...spans.values()].map((s) => s.end);
  const untimed = graph.sequence.filter((s) => s.takes === undefined && s.action !== 'size up');
  return {
    rows: graph.sequence.flatMap((step) => {
      const span = spans.get(step.id);
      return span === undefined
        ? []
        : [
            {
              step: step.id,
              number: step.number,
              title: stepWords(step, plan),
              ...span,
              crew: step.crew,
              critical: critical.has(step.id),
            },
          ];
    }),
    total: measured(
      duration('total', term('figure.time-from-first-to-last'), 'up', {
        ref: { element: 'steps' },
        assumes:
          untimed.length === 0
            ? undefined
            : [
                message('step.untimed', {
                  steps: list(
                    untimed.map((s) => name(`${s.number}`)),
                    'plain',
                  ),
                }),
              ],
      }),
      {
        low: Math.max(0, ...ends.map((e) => e.low)),
        high: Math.max(0, ...ends.map((e) => e.high)),
      },
      term('figure.each-step-starts-when-those-it-waits'),
    ),
    crewPeak: measured(
      count('crewPeak', term('figure.most-people-at-work-at-one-time'), 'up', { ref: { element: 'steps' } }),
      exactly(crewPeak(graph, spans).people),
      term('figure.crews-of-the-steps-under-way-at'),
    ),
  };
}

function spansOf(graph: OrderGraph): ReadonlyMap<ElementId, Span> {
  const spans = new Map<ElementId, Span>();
  for (const step of graph.sequence) {
    const before = graph.waitsFor(step.id).flatMap((id) => spans.get(id)?.end ?? []);
    const start = {
      low: Math.max(0, ...before.map((e) => e.low)),
      high: Math.max(0, ...before.map((e) => e.high)),
    };
    const takes = step.takes ?? exactly(0);
    spans.set(step.id, {
      start,
      end: { low: start.low + takes.low, high: start.high + takes.high },
    });
  }
  return spans;
}

/** Steps whose delay delays the end, each taking its longest. */
function criticalSteps(graph: OrderGraph, spans: ReadonlyMap<ElementId, Span>): ReadonlySet<ElementId> {
  const critical = new Set<ElementId>();
  const last = Math.max(0, ...[...spans.values()].map((s) => s.end.high));
  const near = (a: number, b: number) => Math.abs(a - b) < 1e-6;
  for (const step of [...graph.sequence].reverse()) {
    const span = spans.get(step.id);
    if (span === undefined) continue;
    const drives = graph.sequence.some(
      (s) =>
        critical.has(s.id) &&
        graph.waitsFor(s.id).includes(step.id) &&
        near(spans.get(s.id)?.start.high ?? -1, span.end.high),
    );
    if (drives || near(span.end.high, last)) critical.add(step.id);
  }
  return critical;
}

/** The most people at work at once, and the steps that are then under way. */
export function crewPeak(
  graph: OrderGraph,
  spans: ReadonlyMap<ElementId, Span>,
): { readonly people: number; readonly steps: readonly Step[] } {
  let peak: { people: number; steps: readonly Step[] } = { people: 0, steps: [] };
  for (const moment of graph.sequence) {
    const start = spans.get(moment.id)?.start.high;
    if (start === undefined) continue;
    const busy = graph.sequence.filter((s) => {
      const span = spans.get(s.id);
      // A step that takes no stated time still takes its people at its start.
      return (
        s.id === moment.id ||
        (span !== undefined && span.start.high <= start + 1e-6 && span.end.high > start + 1e-6)
      );
    });
    const people = busy.reduce((sum, s) => sum + (s.crew ?? 0), 0);
    if (people > peak.people) peak = { people, steps: busy };
  }
  return peak;
}

/** Most people at once, with the steps that want them. */
export function busiest(plan: Plan): { readonly people: number; readonly steps: readonly Step[] } {
  const graph = orderGraph(plan);
  return crewPeak(graph, spansOf(graph));
}
