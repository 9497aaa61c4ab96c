import type { PlanSayings } from '../planner/grid.js';
import type { ReadingSayings } from '../measure/parse.js';
import type { ClothSayings } from './cloth.js';
import type { InputSayings } from './field.js';
import type { MeasuredSayings } from './ledger.js';
import type { ListSayings } from './listing.js';
import type { OwnWordsSayings } from './own-words.js';
import type { PictureSayings } from './picture.js';
import type { PlanningSayings } from './planning.js';
import type { OverageSayings } from './quilt.js';
import type { ShopSayings } from './shop.js';
import type { StripSayings } from './strip-list.js';
import type { LaidSayings } from './strips.js';
import type { Quantity } from './quantity.js';
/** What any calculator may say. */
export interface CommonSayings extends ReadingSayings, PlanSayings, InputSayings, MeasuredSayings, ClothSayings, ShopSayings, OverageSayings, ListSayings, OwnWordsSayings, PlanningSayings, LaidSayings, StripSayings, PictureSayings {
    quoted: {
        text: string;
    };
    roundedUp: {
        formula: string;
        step: Quantity;
    };
    roundedToMark: {
        formula: string;
        step: Quantity;
    };
}
