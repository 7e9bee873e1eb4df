// small_shop.h - a small invented shop with at least one record of every kind, as its CSV files.
// In the written order and form, so that reading and writing it gives the same bytes; lines end in
// LF here and in CRLF in small_shop_files(). Tests that want something wrong change one cell.
#pragma once

#include <map>
#include <string>
#include <string_view>

namespace dyestead::test {

inline constexpr std::string_view kSmallShop = R"(== shop.csv
code,name,currency,shown_as_of,year_begins
shop,The Lower Shed,EUR,2026-09-30,
== person.csv
code,name
ada,Ada
bo,"Bo, the nephew"
== pay.csv
code,from,person,standing,per_hour
P1,2025-01-01,ada,own,18.5
P2,2025-01-01,bo,paid,12
P3,2026-01-01,ada,own,
== tariff.csv
code,from,source,per_kwh
T1,2025-01-01,electricity,0.2965
== overhead.csv
code,from,per_year,normal_bars
O1,2025-01-01,640,1200
== normal_loss.csv
code,from,of,rate
N1,2025-01-01,harvest,5 %
N2,2025-01-01,batch,1/30
== sales_tax.csv
code,from,rate
S1,2025-01-01,0 %
== channel_fee.csv
code,from,channel,share,per_payment,per_bar
F1,2025-01-01,card,0.0169,0.05,0.04
== waiting_share.csv
code,from,share
W1,2025-01-01,25 %
== sowing_rule.csv
code,from,last_frost,first_frost,germination,reserve
SR1,2025-01-01,2025-05-12,2025-10-20,70 %,125 %
SR2,2026-01-01,,2026-10-28,,
== price_rule.csv
code,from,margin,markup,price_step
PR1,2025-01-01,40 %,,0.5
PR2,2026-02-01,,150 %,
== paid_out.csv
code,date,what,amount,dye_only,colour,avoidable,note
X1,2026-03-02,garden hose,38.4,garden,,50 %,"half of it would
have been bought anyway"
== equipment.csv
code,name,bought,price,years,dye_only,gone
K1,settling pan,2025-02-01,60,5,vat,2026-06-30
K2,stick blender,2025-02-01,45,3,no,
== colour.csv
code,name,bought_match,match_strength,bought_minutes_per_bar,own_minutes_per_bar,own_cost_per_bar
rose,madder rose,rose-powder,0.8,0.5 min,~1 min,0.02
== material.csv
code,name,kind,purpose,held_as,density,spoon_density,saponification,colour,caution,alkali,purity,shelf_life_days,shelf_room
alum,alum,raw,mordant,mass,,0.9,,,dust,,,,
compost,compost,raw,feed,volume,,,,,none,,,,
lye,sodium hydroxide,raw,lye,mass,,,,,lye,,,,
madder-root,madder root,harvest,,mass,,,,,none,,,,
madder-seed,madder seed,seed,,mass,,,,,none,,,,
olive,olive oil,raw,oil,mass,0.913,,188.5,,none,,,,
own-rose,own madder lake,pigment,,mass,,,,rose,none,,,,
plain-bar,plain bar,bar,,count,,,,,none,,,,
rose-bar,rose bar,bar,,count,,,,,none,,,,
rose-powder,rose powder,raw,colourant,mass,,,,rose,dust,,,,
sleeve,paper sleeve,raw,wrapping,count,,,,,none,,,,
water,rain water,raw,water,volume,1,,,,none,,,,
== lot.csv
code,material
L-alum,alum
L-bars,rose-bar
L-compost,compost
L-lye,lye
L-olive-1,olive
L-olive-2,olive
L-powder,rose-powder
L-root,madder-root
L-rose,own-rose
L-rose-pale,own-rose
L-seed,madder-seed
L-seed-2,madder-seed
L-sleeves,sleeve
== supplier.csv
code,name,carriage,carriage_free_from,order_time,note
mill,"The ""old"" mill",,,,rings back on Mondays
== offer.csv
code,noted,from,supplier,material,pack,price,lead_days,how_known
Q1,2026-01-10,2026-02-01,mill,olive,5 l,38.4,6,
Q2,2026-01-10,2026-02-01,mill,lye,2 lb,7.25,,
== offer_break.csv
offer,position,from_packs,price
Q1,1,4,36.2
== already_here.csv
code,date,lot,amount,cost,time,who,best_before
A1,2025-01-01,L-alum,~12 us tsp,3,,,
A2,2025-01-01,L-compost,200 l,,3 h,ada,
A3,2025-01-01,L-olive-1,4.6 kg,31.2,,,2026-12-31
A4,2025-01-01,L-seed,25 g,4.5,,,
== delivery.csv
code,date,supplier,carriage,share_by,duty,discount,currency,rate,ordered,note
D1,2026-02-20,mill,6.9,weight,,,,,,
== delivery_line.csv
delivery,position,lot,amount,price,tax,supplier_lot,best_before
D1,1,L-olive-2,10 l,71.8,,M-77/2,2027-06-30
D1,2,L-lye,2 kg,11.3,,,
D1,3,L-powder,3.5 oz,9.999999,,,
D1,4,L-sleeves,300,24,,,
== cost_correction.csv
code,date,delivery,correction,amount,note
CC1,2026-03-05,D1,less,4.4,two sleeves short
== loss.csv
code,date,material,lot,amount,reason,note
V1,2026-04-01,olive,L-olive-1,250 ml,spilled,
V2,2026-05-01,olive,,~100 g,own use,a lamp
== count.csv
code,date,note
SC1,2026-06-30,half-year
== count_line.csv
count,position,material,lot,counted,reason
SC1,1,olive,L-olive-1,4.2 kg,spilled
SC1,2,sleeve,,,
== own_measure.csv
code,name,material,amount
OM1,bucket,water,9 l
OM2,scoop,,60 ml
== cost_rule.csv
code,from,material,cost_by
CR1,2025-01-01,,lot
CR2,2026-01-01,compost,average
== bed.csv
code,name,area
south,south bed,14.5 m2
== plant.csv
code,name,latin,part,colour,low,usual,high,crops,years_to_first,caution,strength_low,strength_usual,strength_high,seed_rate,days_to_harvest
madder,madder,Rubia tinctorum,root,rose,0.8 kg,1.5 kg,2.4 kg,1,3,none,,,,,
== planting.csv
code,sown,plant,bed,area,expected,note
M23,2023-04-11,madder,south,60 ft2,8 kg,
== planting_use.csv
planting,position,material,lot,amount
M23,1,madder-seed,L-seed,20 g
== standing_bed.csv
code,date,planting,cost,time,who
B1,2025-01-01,M23,12.5,41 h,ada
== tending.csv
code,date,planting,time,who,what
G1,2026-05-09,M23,95 min,bo,weeded
== tending_use.csv
tending,position,material,lot,amount
G1,1,compost,,30 l
== expected_total.csv
code,date,planting,amount
E1,2026-06-01,M23,method: 7.2 kg
== harvest.csv
code,date,planting,lot,amount,time,who,note
H1,2026-07-03,M23,L-root,6.85 kg,4.5 h,ada,dug before the rain
== seed_kept.csv
code,date,planting,lot,amount,time,who
SK1,2026-07-01,M23,L-seed-2,12 g,30 min,ada
== bed_lost.csv
code,date,planting,area,note
BL1,2026-05-20,M23,4 ft2,the hen got in
== germination_try.csv
code,date,lot,tried,came_up
GT1,2026-03-10,L-seed,20,14
== planting_end.csv
code,date,planting,note
Z1,2026-07-04,M23,
== allowed.csv
code,date,colour,where,asked,answer
K1,2026-02-02,rose,EU,the assessor,waiting
== method.csv
code,name,colour,low,usual,high,note
hot-root,hot root method,rose,~8 g,~14 g,~22 g,
== method_step.csv
method,position,what,temperature_low,temperature_high,acidity_low,acidity_high,hands_on,hands_on_per_kg,waiting,waiting_high,watch,times,caution
hot-root,1,steep,60,70,,,15 min,4 min,2 h,3 h,attended,1,hot
hot-root,2,wash,,,6.5,7.5,5 min,,12 h,,unattended,4,none
== method_use.csv
method,position,material,amount,per
hot-root,1,water,12 l,kg
hot-root,2,alum,1.5 g,litre
== vat.csv
code,date,colour,method,hands_on,waiting,who,washes,note
VAT-1,2026-07-10,rose,,,,,,
== vat_use.csv
vat,position,material,lot,amount
VAT-1,1,madder-root,L-root,2.5 kg
VAT-1,2,alum,,4 us tsp
VAT-1,3,water,,40 l
== vat_heat.csv
vat,position,source,energy,water,heated_from,heated_to,efficiency
VAT-1,1,electricity,3.2 kWh,,,,
VAT-1,2,wood,,20 l,14.5,68,1/3
== vat_step.csv
vat,position,what,begun,who,hands_on,waiting,watch,temperature,acidity,method_step
VAT-1,1,steep,2026-07-10T08:05+02:00,ada,20 min,6 h,attended,65.5,,
VAT-1,2,settle,,,,14 h,unattended,,7.85,
== drying.csv
code,date,lot,amount,dryness,lost,time,who,note
Y1,2026-07-14,L-rose,38.25 g,,,25 min,ada,
Y2,2026-07-20,,,,,10 min,,washed away
== drying_vat.csv
drying,position,vat
Y1,1,VAT-1
== drying_lot.csv
drying,position,lot,amount,worth
Y1,1,L-rose-pale,6 g,0.4
== shade_test.csv
code,date,lot,against,needed_for_same,note
C1,2026-07-15,L-rose,rose-powder,1.4,
== recipe.csv
code,name,superfat,lye_concentration,bars_per_loaf,declared_weight,cure_days,oils,potassium_share,best_days
R1,everyday loaf,6 %,1/3,10,95 g,42,,,
== recipe_part.csv
recipe,position,material,amount,share
R1,1,olive,1 kg,
== recipe_wrapping.csv
recipe,position,material,per_bar
R1,1,sleeve,1
== recipe_colouring.csv
recipe,position,colouring,colour,dose,bar
R1,1,plain,,,plain-bar
R1,2,own,rose,12 g,rose-bar
== batch.csv
code,date,recipe,bar,loaves,split_from,split_share,note
Batch 7,2026-07-21,R1,rose-bar,1,,,
== batch_use.csv
batch,position,material,lot,amount
Batch 7,1,olive,L-olive-2,1 kg
Batch 7,2,lye,,127 g
Batch 7,3,own-rose,L-rose,12 g
== batch_time.csv
batch,position,task,who,time
Batch 7,1,pour,ada,70 min
Batch 7,2,colour,ada,15 min
== cut.csv
code,date,batch,lot,bars,rejected,cured,best_before,ends,time,who,note
Cut 7,2026-07-22,Batch 7,L-bars,10,1,2026-09-02,,,12 min,ada,one end crumbled
== weighing.csv
code,date,lot,bars,total
WG1,2026-08-30,L-bars,4,392 g
== wrapping.csv
code,date,lot,bars,time,who
J1,2026-09-03,L-bars,9,30 min,bo
== wrapping_use.csv
wrapping,position,material,lot,amount
J1,1,sleeve,,9
== hold.csv
code,date,lot,why
HO1,2026-08-01,L-bars,lye looked heavy
== release.csv
code,date,lot,why
RE1,2026-08-15,L-bars,tested: no zap
== plan.csv
code,noted,date,recipe,bar,loaves
PL1,2026-09-25,2026-10-10,R1,rose-bar,2
== fair.csv
code,date,name,fee,travel,change_float,cash_in_tin,card_takings,card_payments,ended,noted,fee_paid,open,reductions,note
autumn,2026-09-12,autumn fair,45,11.2,50,71,20.97,2,cut short,,,,,rain from two
== fair_line.csv
fair,position,bar,lot,taken,back,price
autumn,1,rose-bar,L-bars,8,2,6.99
== fair_bundle.csv
fair,position,what,bars,price,sold
autumn,1,any three,3,18.5,1
== fair_time.csv
fair,position,who,time
autumn,1,ada,7 h
== sale.csv
code,date,channel,order_number,buyer,postage,postage_paid,time,who
I1,2026-09-20,online,,,3.99,,10 min,ada
== sale_line.csv
sale,position,bar,lot,bars,price
I1,1,rose-bar,,1,7.5
== sale_powder.csv
sale,position,pigment,lot,amount,price
I1,1,own-rose,,~2 g,3.5
== out_at_shop.csv
code,date,where,bar,lot,bars,price,share
OS1,2026-09-14,the corner shop,rose-bar,L-bars,2,7.5,30 %
== out_settled.csv
code,date,out,sold,back,note
OS1a,2026-09-28,OS1,1,0,
== returned.csv
code,date,lot,bars,refund,fit,note
RT1,2026-09-25,L-bars,1,7.5,spoiled,cracked in the post
== price.csv
code,from,bar,shelf
U1,2026-09-01,rose-bar,7.5
== wholesale_price.csv
code,from,bar,price
WP1,2026-09-01,rose-bar,4.5
== powder_price.csv
code,from,colour,pack,price
PP1,2026-09-01,rose,~10 g,9
== price_belief.csv
code,date,colour,plain,bought,own
PB1,2026-01-01,rose,5.5,6.5,7.5
== sitting.csv
code,date,who,time,note
SI1,2026-07-22,ada,45 min,
== sitting_at.csv
sitting,position,tending,harvest,vat,drying,batch,cut,wrapping,fair,sale
SI1,1,,,,,Batch 7,,,,
SI1,2,,,,,,Cut 7,,,
== work.csv
code,date,who,time,what
WK1,2026-08-05,ada,90 min,paperwork
== jotting.csv
code,date,text,done
JT1,2026-08-06,ask about labels,2026-08-20
JT2,2026-09-01,"rose came out paler, why?",
== guess.csv
code,date,colour,question,answer
GU1,2025-01-01,rose,garden hours,~20 h
== note.csv
code,date,about,text,file
NT1,2026-07-11,vat_step/VAT-1/1,"Too hot at first, then right.",
NT2,2026-07-14,drying/Y1,,photographs/first-rose.jpg
)";

using Files = std::map<std::string, std::string>;  // name -> text

inline Files small_shop_files() {
    Files files;
    std::string_view rest = kSmallShop;
    while (!rest.empty()) {
        const auto name_end = rest.find('\n');
        const auto next = rest.find("\n== ", name_end);
        const auto text = rest.substr(name_end + 1, next == rest.npos ? rest.npos : next - name_end);
        std::string written;
        bool quoted = false;  // line breaks inside a cell stay as they are
        for (const char c : text) {
            if (c == '"') quoted = !quoted;
            if (c == '\n' && !quoted) written += '\r';
            written += c;
        }
        files[std::string{rest.substr(3, name_end - 3)}] = written;
        rest = next == rest.npos ? std::string_view{} : rest.substr(next + 1);
    }
    return files;
}

}  // namespace dyestead::test
