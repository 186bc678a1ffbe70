# min Σ outside/step / 3: the deviations of three targets of equal weight, in noticeable steps.
set M;
param iodine{M}; param saponification{M}; param price{M};
table materials IN "CSV" "materials.csv": M <- [id], iodine, saponification, price;
set C;
param iodine_low{C}; param iodine_high{C}; param saponification_low{C}; param saponification_high{C}; param cost_high{C};
param alpha_max{C}; param zeta_max{C}; param eta_min{C};
table cases IN "CSV" "cases.csv": C <- [case], iodine_low, iodine_high, saponification_low, saponification_high, cost_high, alpha_max, zeta_max, eta_min;
param chosen symbolic in C;
# A noticeable step of a price is a twentieth of what is asked, at least a hundredth.
param cost_step := max(0.01, 0.05 * cost_high[chosen]);
var x{m in M} >= if m = "eta" then eta_min[chosen] else 0, <= if m = "alpha" then alpha_max[chosen] else if m = "zeta" then zeta_max[chosen] else 100;
var il >= 0; var ih >= 0; var sl >= 0; var sh >= 0; var ch >= 0;
minimize distance: ((il + ih) / 10 + (sl + sh) / 10 + ch / cost_step) / 3;
s.t. whole: sum{m in M} x[m] = 100;
s.t. i1: sum{m in M} iodine[m] * x[m] / 100 + il >= iodine_low[chosen];
s.t. i2: sum{m in M} iodine[m] * x[m] / 100 - ih <= iodine_high[chosen];
s.t. s1: sum{m in M} saponification[m] * x[m] / 100 + sl >= saponification_low[chosen];
s.t. s2: sum{m in M} saponification[m] * x[m] / 100 - sh <= saponification_high[chosen];
s.t. c1: sum{m in M} price[m] * x[m] / 100 - ch <= cost_high[chosen];
solve;
printf "%s,%.6f", chosen, distance;
printf{m in M} ",%.4f", x[m];
printf "\n";
end;
