title = Struts on one side only
protects = Struts on one side only can push a vehicle over to the other side.

# $vehicle (name)
# $struts (list)
driver-only = The { $vehicle } has struts on the driver side ({ $struts }) and none on the passenger side. Set struts on the passenger side too.

# $vehicle (name)
# $struts (list)
passenger-only = The { $vehicle } has struts on the passenger side ({ $struts }) and none on the driver side. Set struts on the driver side too.
