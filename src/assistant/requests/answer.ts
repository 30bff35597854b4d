import type { ReadContext } from '#parsers';
import { FieldRecord, type Request, toCelsius, toKg } from '#records';
import { answerTyped } from '../answers.ts';
import type { Draft } from '../draft.ts';
import { entryLine } from '../entry-lines.ts';
import { forget } from '../questions.ts';
import { say } from '../say.ts';
import { couldBeTare, setTare } from './setting.ts';

/** A short message that answers what was asked: a doubt's choice, an empty weight, the air's temperature. */
export function answer(draft: Draft, request: Request, context: ReadContext): void {
  const to = String(request.to ?? '');
  const question = context.book?.openQuestion ?? null;
  if (question?.about === 'tare') {
    const value = Number.parseFloat(to.replace(',', '.'));
    const unit = /lb|#/i.test(to) ? 'lb' : /kg/i.test(to) ? 'kg' : context.units.mass;
    if (Number.isFinite(value) && couldBeTare(draft, question.container, toKg(value, unit))) {
      if (draft.incoming.guest) {
        draft.lines.push(say('guest-sets-nothing'));
        return;
      }
      forget(draft, question);
      setTare(draft, question.container, question.label, toKg(value, unit));
      return;
    }
  }
  if (question?.about === 'ambient') {
    const value = Number.parseFloat(to.replace(',', '.').replace('−', '-'));
    const unit = /f/i.test(to) ? 'F' : /c/i.test(to) ? 'C' : context.units.temperature;
    if (Number.isFinite(value)) {
      forget(draft, question);
      const record = FieldRecord.parse({
        kind: 'temperature',
        place: 'ambient',
        celsius: [toCelsius(value, unit)],
      });
      const entry = draft.add(record, { typed: to });
      draft.lines.push(entryLine(draft, entry));
      return;
    }
  }
  if (answerTyped(draft, question, to)) return;
  draft.lines.push(say('what-was-number', { text: { text: to } }));
}
