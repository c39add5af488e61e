import type { Formula } from '../model/formula.ts';
import type { SettingValue } from '../model/setting.ts';
import { printQuantity } from '../quantity/index.ts';
import { evaluateFormula } from '../formula/index.ts';
import type { Session } from './session.ts';
