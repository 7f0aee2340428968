#!/bin/sh
# Writes reference.csv: every unit's size by the definitions of GNU units
# (Debian package "units", file definitions.units). Run it after adding a unit;
# it needs `apt-get install units`.
cd "$(dirname "$0")" || exit 1
{
	echo "# $(units --version | head -1), Debian package units $(dpkg-query -W -f='${Version}' units); made by reference.sh"
	echo "name,expression,si,value"
	while read -r name expression si; do
		printf '%s,%s,%s,%s\n' "$name" "$expression" "$si" "$(units -o %.17g -t -- "$expression" "$si")"
	done <<'LIST'
percent percent 1
ratio 1 1
number 1 1
inch inch m
thou mil m
ft foot m
mm mm m
um micron m
cm cm m
m m m
sqin in^2 m^2
sqmm mm^2 m^2
sqft ft^2 m^2
sqm m^2 m^2
cuin in^3 m^3
cumm mm^3 m^3
cucm cm^3 m^3
litre liter m^3
cum m^3 m^3
in4 in^4 m^4
m4 m^4 m^4
mm4 mm^4 m^4
lb lb kg
kg kg kg
t tonne kg
short_ton shortton kg
long_ton longton kg
oz oz kg
g g kg
cwt brhundredweight kg
lb_per_in3 lb/in^3 kg/m^3
lb_per_ft3 lb/ft^3 kg/m^3
kg_per_m3 kg/m^3 kg/m^3
g_per_cm3 g/cm^3 kg/m^3
lbf lbf N
N N N
kN kN N
kip kip N
kgf kgf N
short_tonf shortton*gravity N
long_tonf longton*gravity N
tonne_force tonne*gravity N
psi psi Pa
ksi 1000psi Pa
Pa Pa Pa
kPa kPa Pa
MPa MPa Pa
GPa GPa Pa
bar bar Pa
lbf_ft lbf*ft N*m
lbf_in lbf*in N*m
Nm N*m N*m
J J J
kJ kJ J
ft_lbf ft*lbf J
hp horsepower W
W W W
kW kW W
lbf_per_in lbf/in N/m
N_per_mm N/mm N/m
N_per_m N/m N/m
kip_per_in kip/in N/m
lbf_per_inch_of_weld lbf/in N/m
N_per_m_of_weld N/m N/m
N_per_mm_of_weld N/mm N/m
deg degree radian
rad radian radian
arcmin arcmin radian
arcsec arcsec radian
thou_per_ft mil/ft 1
mm_per_m mm/m 1
hours circle/12 radian
degF tempF(212) K
degC tempC(100) K
K K K
delta_degF degF K
delta_degC degC K
per_degF 1/degF 1/K
per_degC 1/degC 1/K
s s s
min min s
hour hour s
sfpm ft/min m/s
ipm in/min m/s
m_per_min m/min m/s
mm_per_min mm/min m/s
m_per_s m/s m/s
mph mph m/s
rpm rpm radian/s
rad_per_s radian/s radian/s
ipr in/rev m/radian
mm_per_rev mm/rev m/radian
m_per_rad m/radian m/radian
A A A
V V V
kJ_per_in kJ/in J/m
J_per_in J/in J/m
J_per_m J/m J/m
kJ_per_mm kJ/mm J/m
lb_per_ft lb/ft kg/m
lb_per_in lb/in kg/m
kg_per_m kg/m kg/m
lb_per_hour lb/hour kg/s
kg_per_s kg/s kg/s
kg_per_hour kg/hour kg/s
LIST
} >reference.csv
